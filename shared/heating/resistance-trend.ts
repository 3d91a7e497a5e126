import type { CableReading } from './cable-reading.js';
import type { HeatingLabel } from './label.js';
import { resistanceAtLabel } from './resistance-window.js';

/** How far the resistance may wander from the set's first reading before it is a warning. Common practice, no source. */
const WANDERS = 0.03;

/**
 * A warning when the resistance, cold lead and temperature taken out, has moved from the first reading of the set by more
 * than 3 % though both lie within the label's tolerance; else nothing.
 */
export function resistanceTrend(
  label: HeatingLabel,
  reading: CableReading,
  earlier: readonly CableReading[],
): string | undefined {
  const first = earlier.reduce<CableReading | undefined>(
    (oldest, one) => (!oldest || one.at < oldest.at ? one : oldest),
    undefined,
  );
  if (!first) return undefined;
  const before = resistanceAtLabel(label, first);
  const now = resistanceAtLabel(label, reading);
  if (before <= 0 || Math.abs(now / before - 1) <= WANDERS + 1e-9) return undefined;
  return `Resistance moved from ${before.toFixed(2)} to ${now.toFixed(2)} Ω at the label's temperature: read again with the same meter, then look for damage before going on`;
}
