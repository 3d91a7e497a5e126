import { useCallback, useEffect, useRef, useState } from 'react';
import { keepAnswer, keptAnswer } from '../device/kept-answers.js';
import { ask, AskError } from './ask.js';
import type { TypedDocumentString } from './documents.js';
import { useHints } from './live.js';

/** What a page knows about the answer to its question. Older data stays while newer is asked for. */
export interface QueryState<R> {
  readonly data: R | null;
  readonly error: AskError | null;
  readonly reload: () => void;
  /** When the data was heard, by this device's clock; null while there is none. */
  readonly heardAt: number | null;
}

/**
 * Asks when the variables change, when `reload` is called and when a hint says that something changed. Answers that
 * were overtaken by a later question are dropped; hints that come while an answer is awaited make one more question.
 * Nothing is asked until `when` is true. With `keep`, the answer is kept on the device under that name, and shown until
 * a newer one comes.
 */
export function useQuery<R, V>(
  document: TypedDocumentString<R, V>,
  variables: V,
  {
    searches = false,
    when = true,
    keep = null,
  }: { readonly searches?: boolean; readonly when?: boolean; readonly keep?: string | null } = {},
): QueryState<R> {
  const key = JSON.stringify(variables);
  const [answer, setAnswer] = useState<Omit<QueryState<R>, 'reload'>>({
    data: null,
    error: null,
    heardAt: null,
  });
  const keepAs = keep === null ? null : `${keep} ${key}`;
  const asked = useRef({ number: 0, busy: false, again: false });

  const load = useCallback(async () => {
    const state = asked.current;
    const number = ++state.number;
    state.busy = true;
    try {
      const data = await ask(document, JSON.parse(key) as V);
      if (number === state.number) setAnswer({ data, error: null, heardAt: Date.now() });
      if (keepAs !== null) await keepAnswer(keepAs, data);
    } catch (error) {
      if (!(error instanceof AskError)) throw error;
      if (number === state.number) setAnswer((before) => ({ ...before, error }));
    } finally {
      if (number === state.number) {
        state.busy = false;
        if (state.again) {
          state.again = false;
          void load();
        }
      }
    }
  }, [document, key, keepAs]);

  const reload = useCallback(() => {
    if (asked.current.busy) asked.current.again = true;
    else void load();
  }, [load]);

  useEffect(() => {
    if (when) void load();
  }, [load, when]);
  useEffect(() => {
    if (keepAs === null) return;
    void keptAnswer<R>(keepAs).then(
      (kept) => kept && setAnswer((now) => (now.data ? now : { ...now, ...kept })),
    );
  }, [keepAs]);
  const heard = useCallback(
    (improvementId?: string | null) => {
      if (when && (searches || !improvementId)) reload();
    },
    [reload, searches, when],
  );
  useHints(heard);
  return { ...answer, reload };
}
