import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useReducer,
  useRef,
} from 'react';
import { ask, AskError } from '../api/ask.js';
import type { TypedDocumentString } from '../api/documents.js';
import { useLive } from '../api/live.js';
import { CHANGE_DOCUMENTS, type ChangeInput, type ChangeName } from './change-documents.js';
import { keepSends, keptSends } from './kept-sends.js';
import { type Outcome, readOutcome } from './read-outcome.js';
import type { Send } from './send.js';

/** The changes of this page and how to make new ones. */
export interface Sends {
  readonly sends: readonly Send[];
  /** Sends a change; resolves to whether it was done. A refusal or a lost connection stays on the page. */
  readonly send: <N extends ChangeName>(change: N, title: string, input: ChangeInput<N>) => Promise<boolean>;
  readonly tryAgain: (key: string) => void;
  readonly dismiss: (key: string) => void;
}

type Action = { readonly put: Send } | { readonly drop: string };

function reduce(sends: readonly Send[], action: Action): readonly Send[] {
  if ('drop' in action) return sends.filter(({ key }) => key !== action.drop);
  const known = sends.some(({ key }) => key === action.put.key);
  return known
    ? sends.map((send) => (send.key === action.put.key ? action.put : send))
    : [action.put, ...sends];
}

const SendsContext = createContext<Sends | null>(null);

/** Holds the changes of one signed-in person. */
export function SendsProvider({
  personId,
  children,
}: {
  readonly personId: string;
  readonly children: ReactNode;
}) {
  const [sends, act] = useReducer(reduce, personId, keptSends);
  const { touch } = useLive();
  const latest = useRef(sends);
  useEffect(() => {
    latest.current = sends;
    keepSends(personId, sends);
  }, [personId, sends]);

  const deliver = useCallback(
    async (send: Send): Promise<boolean> => {
      act({ put: { ...send, state: 'sending', message: '', details: [] } });
      const answered = await attempt(send);
      act({ put: answered });
      if (answered.state !== 'unsent') touch();
      return answered.state === 'done';
    },
    [touch],
  );

  const value = useMemo<Sends>(
    () => ({
      sends,
      send: (change, title, input) =>
        deliver({
          key: crypto.randomUUID(),
          change,
          title,
          input,
          state: 'sending',
          message: '',
          details: [],
        }),
      tryAgain: (key) => {
        const send = latest.current.find((candidate) => candidate.key === key);
        if (send) void deliver(send);
      },
      dismiss: (key) => act({ drop: key }),
    }),
    [deliver, sends],
  );
  return <SendsContext value={value}>{children}</SendsContext>;
}

/** The changes of the signed-in person. */
export function useSends(): Sends {
  const sends = useContext(SendsContext);
  if (!sends) throw new Error('useSends was called outside a SendsProvider');
  return sends;
}

/** One try; never throws, because whatever happened belongs on the page. */
async function attempt(send: Send): Promise<Send> {
  try {
    const document = CHANGE_DOCUMENTS[send.change] as unknown as TypedDocumentString<
      { outcome: Outcome },
      unknown
    >;
    const { outcome } = await ask(document, { input: { ...send.input, clientKey: send.key } });
    return { ...send, ...readOutcome(outcome) };
  } catch (error) {
    if (error instanceof AskError && error.fault === 'not-allowed')
      return { ...send, state: 'refused', message: error.message, details: [] };
    const message = error instanceof Error ? error.message : String(error);
    return { ...send, state: 'unsent', message, details: [] };
  }
}
