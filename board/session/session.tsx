import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useState } from 'react';
import { ask, AskError, SIGNED_OUT } from '../api/ask.js';
import { forgetAnswers, keepAnswer, keptAnswer } from '../device/kept-answers.js';
import {
  CompanyNameDocument,
  type CompanyNameQuery,
  type PersonFieldsFragment,
  SessionDocument,
  SignOutDocument,
} from '../api/documents.js';

export type Me = PersonFieldsFragment;
export type Company = CompanyNameQuery['company'];

/** Who is signed in; `unknown` until the service has answered, or the device knows who was here last. */
export interface Session {
  readonly state: 'unknown' | 'in' | 'out' | 'unreachable';
  readonly me: Me | null;
  readonly company: Company | null;
  /** Asks the service anew, after signing in or when a page was told that nobody is signed in. */
  readonly refresh: () => Promise<void>;
  readonly signOut: () => Promise<void>;
}

type Known = Pick<Session, 'state' | 'me' | 'company'>;

/** Name under which the device keeps who was signed in last. */
const KEPT = 'session';

const SessionContext = createContext<Session | null>(null);

/** Finds out who is signed in and tells every page. */
export function SessionProvider({ children }: { readonly children: ReactNode }) {
  const [known, setKnown] = useState<Known>({ state: 'unknown', me: null, company: null });
  const refresh = useCallback(async () => setKnown(await whoIsThere()), []);
  const signOut = useCallback(async () => {
    await ask(SignOutDocument, {});
    await forgetAnswers();
    await refresh();
  }, [refresh]);

  useEffect(() => {
    void refresh();
    // A session that ran out while a page was open leads back to the sign-in; unsent changes stay on the device.
    const ended = () => setKnown({ state: 'out', me: null, company: null });
    addEventListener(SIGNED_OUT, ended);
    return () => removeEventListener(SIGNED_OUT, ended);
  }, [refresh]);

  const session = useMemo(() => ({ ...known, refresh, signOut }), [known, refresh, signOut]);
  return <SessionContext value={session}>{children}</SessionContext>;
}

/** The session, whoever is signed in. */
export function useSession(): Session {
  const session = useContext(SessionContext);
  if (!session) throw new Error('useSession was called outside a SessionProvider');
  return session;
}

/** The signed-in person and their company, for pages that are only shown to one. */
export function useSignedIn(): { readonly me: Me; readonly company: Company } {
  const { me, company } = useSession();
  if (!me || !company) throw new Error('A page for signed-in people was drawn while nobody is signed in');
  return { me, company };
}

async function whoIsThere(): Promise<Known> {
  try {
    const { me } = await ask(SessionDocument, {});
    if (!me) return { state: 'out', me: null, company: null };
    const { company } = await ask(CompanyNameDocument, {});
    await keepAnswer(KEPT, { state: 'in', me, company } satisfies Known);
    return { state: 'in', me, company };
  } catch (error) {
    if (error instanceof AskError && error.fault === 'signed-out')
      return { state: 'out', me: null, company: null };
    // Without a signal the page opens for whoever was signed in here last; the service asks again before it answers.
    const kept = await keptAnswer<Known>(KEPT);
    return kept?.data ?? { state: 'unreachable', me: null, company: null };
  }
}
