import { createClient } from 'graphql-ws';
import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react';
import { ask } from './ask.js';
import { ChangedDocument, ChangesSinceDocument } from './documents.js';

/** Told that something changed, or with an id that only that search has got further; what exactly is asked for anew. */
type Listener = (improvementId?: string | null) => void;

/** The one live connection of a page. */
export interface Live {
  readonly connected: boolean;
  /** Hears of changes until the returned function is called. */
  readonly listen: (listener: Listener) => () => void;
  /** Tells this page's own parts to ask anew, without waiting for the service's hint. */
  readonly touch: () => void;
}

const LiveContext = createContext<Live>({
  connected: false,
  listen: () => () => undefined,
  touch: () => undefined,
});

/** Keeps the connection open and opens it again whenever it was lost. */
export function LiveProvider({ children }: { readonly children: ReactNode }) {
  const [connected, setConnected] = useState(false);
  const listeners = useMemo(() => new Set<Listener>(), []);
  const touch = useMemo(
    () => (improvementId?: string | null) => listeners.forEach((listener) => listener(improvementId)),
    [listeners],
  );

  useEffect(() => openHints(touch, setConnected), [touch]);

  const live = useMemo<Live>(
    () => ({
      connected,
      touch,
      listen: (listener) => {
        listeners.add(listener);
        return () => listeners.delete(listener);
      },
    }),
    [connected, listeners, touch],
  );
  return <LiveContext value={live}>{children}</LiveContext>;
}

/** How often a page without a connection of its own asks anew, in milliseconds. */
const QUIET_PAUSE = 60_000;

/** In place of the connection on pages of signed links, which hear no hints: asks when looked at and once a minute. */
export function QuietProvider({ children }: { readonly children: ReactNode }) {
  const listeners = useMemo(() => new Set<Listener>(), []);
  const live = useMemo<Live>(
    () => ({
      connected: true,
      touch: () => listeners.forEach((listener) => listener()),
      listen: (listener) => {
        listeners.add(listener);
        return () => listeners.delete(listener);
      },
    }),
    [listeners],
  );
  useEffect(() => {
    const look = () => {
      if (document.visibilityState === 'visible') live.touch();
    };
    const timer = setInterval(look, QUIET_PAUSE);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(timer);
      document.removeEventListener('visibilitychange', look);
    };
  }, [live]);
  return <LiveContext value={live}>{children}</LiveContext>;
}

/** The page's live connection. */
export function useLive(): Live {
  return useContext(LiveContext);
}

/** Calls `listener` on every change until the component goes. */
export function useHints(listener: Listener): void {
  const { listen } = useLive();
  useEffect(() => listen(listener), [listen, listener]);
}

/**
 * Subscribes to hints. After a lost connection it asks what changed since the last hint, because hints sent meanwhile
 * are gone.
 *
 * @returns closes the connection.
 */
function openHints(touch: Listener, setConnected: (connected: boolean) => void): () => void {
  let lastChange: string | null = null;
  let connections = 0;
  const client = createClient({
    url: `${location.origin.replace(/^http/, 'ws')}/graphql`,
    retryAttempts: Number.POSITIVE_INFINITY,
    shouldRetry: () => true,
    retryWait: (retries) =>
      new Promise((resolve) => setTimeout(resolve, Math.min(500 * 2 ** retries, 10_000))),
    on: {
      connected: () => {
        setConnected(true);
        connections += 1;
        if (connections > 1) void catchUp(lastChange).then((missed) => missed && touch());
      },
      closed: () => setConnected(false),
    },
  });
  client.subscribe<{ changed: { changeNumber: string; improvementId: string | null } }>(
    { query: ChangedDocument.toString() },
    {
      next: ({ data }) => {
        if (!data) return;
        if (data.changed.changeNumber !== '0') lastChange = data.changed.changeNumber;
        touch(data.changed.improvementId);
      },
      error: () => setConnected(false),
      complete: () => setConnected(false),
    },
  );
  return () => void client.dispose();
}

/** Whether anything changed since the last hint, or may have. */
async function catchUp(lastChange: string | null): Promise<boolean> {
  if (lastChange === null) return true;
  try {
    const { changesSince } = await ask(ChangesSinceDocument, { changeNumber: lastChange });
    return changesSince.length > 0;
  } catch {
    return true;
  }
}
