import {
  createContext,
  type ReactNode,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
  useSyncExternalStore,
} from 'react';
import { useLive } from '../api/live.js';
import type { ChangeInput, ChangeName } from './change-documents.js';
import type { OutboxView } from './outbox/outbox.js';
import type { OutboxFile } from './outbox/outbox-record.js';
import { openPageOutbox, type PageOutbox } from './outbox/page-outbox.js';
import { ownValueInput } from './own-value.js';
import type { Send } from './send.js';
import { useSending } from './use-sending.js';

/** The changes of this page and how to make new ones. */
export interface Sends {
  readonly sends: readonly Send[];
  /** How many changes have no answer yet. */
  readonly unsent: number;
  /** How many of them only a newer version of the page can read. */
  readonly unreadable: number;
  /** Why this device keeps nothing; null when it does. */
  readonly fault: string | null;
  /**
   * Keeps a change and sends it; resolves to whether it was done. Anything else stays on the page, and what has no
   * answer is sent again by itself.
   */
  readonly send: <N extends ChangeName>(
    change: N,
    title: string,
    input: ChangeInput<N>,
    file?: OutboxFile,
  ) => Promise<boolean>;
  readonly tryAgain: (key: string) => void;
  readonly dismiss: (key: string) => void;
  /** Sets the own value over the other one of a conflict. */
  readonly takeOwn: (send: Send) => void;
}

const NOTHING: OutboxView = { sends: [], unsent: 0, unreadable: 0 };
const never = () => () => undefined;

const SendsContext = createContext<Sends | null>(null);

/** Holds the outbox of one signed-in person. */
export function SendsProvider({
  personId,
  children,
}: {
  readonly personId: string;
  readonly children: ReactNode;
}) {
  const { touch, connected } = useLive();
  const page = usePageOutbox(personId);
  const outbox = page.opened?.outbox ?? null;
  const view = useSyncExternalStore(outbox?.subscribe ?? never, outbox?.snapshot ?? (() => NOTHING));
  useSending(outbox, connected);

  // What was answered may be on record now; the page asks anew.
  const unsent = useRef(0);
  useEffect(() => {
    if (view.unsent < unsent.current) touch();
    unsent.current = view.unsent;
  }, [view.unsent, touch]);

  const { opening, opened } = page;
  const value = useMemo<Sends>(
    () => ({
      ...view,
      fault: opened?.fault ?? null,
      send: async (change, title, input, file) => {
        const { outbox: box } = await opening();
        const state = await box.send({
          personId,
          change,
          title,
          input: input as Readonly<Record<string, unknown>>,
          file: file ?? null,
        });
        return state === 'done';
      },
      tryAgain: (key) => void opened?.outbox.tryAgain(key),
      dismiss: (key) => void opened?.outbox.dismiss(key),
      takeOwn: (send) => void opened?.outbox.replace(send.key, ownValueInput(send)),
    }),
    [view, opened, opening, personId],
  );
  return <SendsContext value={value}>{children}</SendsContext>;
}

/** The changes of the signed-in person. */
export function useSends(): Sends {
  const sends = useContext(SendsContext);
  if (!sends) throw new Error('useSends was called outside a SendsProvider');
  return sends;
}

/** Opens the outbox with the page; a change that is made before it is open waits for it. */
function usePageOutbox(personId: string) {
  const [opened, setOpened] = useState<PageOutbox | null>(null);
  const promise = useRef<Promise<PageOutbox> | null>(null);
  const opening = useMemo(() => () => (promise.current ??= openPageOutbox(personId)), [personId]);
  useEffect(() => {
    let left = false;
    void opening().then((page) => !left && setOpened(page));
    return () => {
      left = true;
    };
  }, [opening]);
  return { opened, opening };
}
