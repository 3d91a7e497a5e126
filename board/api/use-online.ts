import { useSyncExternalStore } from 'react';

/** Whether the device has any network at all; a live connection may not notice for minutes that it has none. */
export function useOnline(): boolean {
  return useSyncExternalStore(watch, () => navigator.onLine);
}

function watch(changed: () => void): () => void {
  addEventListener('online', changed);
  addEventListener('offline', changed);
  return () => {
    removeEventListener('online', changed);
    removeEventListener('offline', changed);
  };
}
