import { useSyncExternalStore } from 'react';

const MOVED = 'flagway:moved';

/** Goes to another page of the client without loading the document again. */
export function goTo(address: string): void {
  history.pushState(null, '', address);
  dispatchEvent(new Event(MOVED));
}

/** Changes the query of the address in place, so that a reload and a shared link show the same. */
export function setQuery(changes: Readonly<Record<string, string | null>>): void {
  const url = new URL(location.href);
  for (const [name, value] of Object.entries(changes)) {
    if (value === null) url.searchParams.delete(name);
    else url.searchParams.set(name, value);
  }
  history.replaceState(null, '', url);
  dispatchEvent(new Event(MOVED));
}

/** The address shown now, as path and query. */
export function useAddress(): { readonly path: string; readonly query: URLSearchParams } {
  const address = useSyncExternalStore(watch, () => location.pathname + location.search);
  const { pathname, searchParams } = new URL(address, location.origin);
  return { path: pathname, query: searchParams };
}

function watch(changed: () => void): () => void {
  addEventListener('popstate', changed);
  addEventListener(MOVED, changed);
  return () => {
    removeEventListener('popstate', changed);
    removeEventListener(MOVED, changed);
  };
}
