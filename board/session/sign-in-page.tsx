import { type FormEvent, useState } from 'react';
import { ask, AskError } from '../api/ask.js';
import { SignInDocument, SignInToDemoDocument } from '../api/documents.js';
import { goTo } from '../routing/location.js';
import { homeOf } from '../routing/page-of.js';
import { DemoPeople } from './demo-people.js';
import { type Me, useSession } from './session.js';
import { ROLE_WORDS } from './role-words.js';
import './sign-in-page.css';

/** Signing in with e-mail and password, or as a person of the demo. */
export function SignInPage() {
  const { state, me, refresh } = useSession();
  const [fault, setFault] = useState('');
  const [busy, setBusy] = useState(false);

  const enter = async (signIn: () => Promise<Me>) => {
    setBusy(true);
    setFault('');
    try {
      const person = await signIn();
      await refresh();
      goTo(homeOf(person.role));
    } catch (error) {
      if (!(error instanceof AskError)) throw error;
      setFault(error.message);
    } finally {
      setBusy(false);
    }
  };
  const submit = (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    const input = { email: String(form.get('email')), password: String(form.get('password')) };
    void enter(async () => (await ask(SignInDocument, { input })).signIn.person);
  };

  return (
    <main className="sign-in">
      <h1>Flagway</h1>
      <p>Schedule board for entries rebuilt with heating cable under stone.</p>
      {state === 'in' && me && (
        <p className="cell">
          Signed in as {me.name}, {ROLE_WORDS[me.role]}. <a href={homeOf(me.role)}>Go on</a>, or sign in as
          somebody else below.
        </p>
      )}
      <form onSubmit={submit} className="cell">
        <h2>Sign in</h2>
        <label>
          E-mail
          <input name="email" type="email" autoComplete="username" required />
        </label>
        <label>
          Password
          <input name="password" type="password" autoComplete="current-password" required />
        </label>
        <p role="alert" className="fault">
          {fault}
        </p>
        <button type="submit" className="act act-strong" disabled={busy}>
          Sign in
        </button>
      </form>
      <DemoPeople
        busy={busy}
        choose={(personId) =>
          void enter(async () => (await ask(SignInToDemoDocument, { personId })).signInToDemo.person)
        }
      />
    </main>
  );
}
