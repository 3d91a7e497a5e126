import { useCallback, useRef, useState } from 'react';
import { ask, AskError } from '../api/ask.js';
import type { TypedDocumentString } from '../api/documents.js';
import { useLive } from '../api/live.js';
import type { Fault } from './forms/place-faults.js';

/** A try without an answer for so long, in milliseconds, counts as lost; trying again cannot do it twice. */
const PATIENCE = 120_000;

/** What the service answers to a form. */
interface Answer {
  readonly __typename: string;
  readonly code?: string;
  readonly message?: string;
  readonly faults?: readonly Fault[];
}

/** What came of sending a form: entered, or refused with every fault. What was typed stays in the page. */
export type Entered<O> =
  { readonly ok: true; readonly outcome: O } | { readonly ok: false; readonly faults: readonly Fault[] };

/** Sends a form. The same input sent again after a lost answer is the same change: it keeps its client key. */
export function useEnter<O extends Answer, I extends { clientKey: string }>(
  document: TypedDocumentString<{ outcome: O }, { input: I }>,
) {
  const { touch } = useLive();
  const [since, setSince] = useState<number | null>(null);
  const sent = useRef({ text: '', key: '' });
  const enter = useCallback(
    async (input: Omit<I, 'clientKey'>): Promise<Entered<O>> => {
      const text = JSON.stringify(input);
      if (sent.current.text !== text) sent.current = { text, key: crypto.randomUUID() };
      setSince(Date.now());
      try {
        const keyed = { ...input, clientKey: sent.current.key } as I;
        const { outcome } = await ask(document, { input: keyed }, AbortSignal.timeout(PATIENCE));
        // An answer ends the change: what is sent next, even if it is the same again, is another one.
        sent.current = { text: '', key: '' };
        if (outcome.code === undefined) {
          touch();
          return { ok: true, outcome };
        }
        return {
          ok: false,
          faults: outcome.faults ?? [{ path: '', message: outcome.message ?? outcome.code }],
        };
      } catch (error) {
        if (!(error instanceof AskError)) throw error;
        return { ok: false, faults: [{ path: '', message: error.message }] };
      } finally {
        setSince(null);
      }
    },
    [document, touch],
  );
  return { enter, since };
}
