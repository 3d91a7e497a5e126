import { useEffect, useState } from 'react';

/** When something began to go on, by this device's clock; null while it does not. */
export function useSince(on: boolean): number | null {
  const [since, setSince] = useState<number | null>(null);
  useEffect(() => setSince(on ? Date.now() : null), [on]);
  return since;
}
