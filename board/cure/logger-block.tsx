import { type FormEvent, useState } from 'react';
import { ask } from '../api/ask.js';
import { RegisterLoggerDocument } from '../api/documents.js';
import { useLive } from '../api/live.js';
import { useSends } from '../sends/sends.js';
import { useSignedIn } from '../session/session.js';
import { isoWords } from '../time/moment-words.js';
import { Sheet } from '../job/sheet.js';

interface LoggerBlockProps {
  readonly site: {
    readonly id: string;
    readonly loggers: readonly {
      readonly id: string;
      readonly name: string;
      readonly lastPostAt: string | null;
      readonly revokedAt: string | null;
      readonly revision: number;
    }[];
  };
  readonly zone: string;
}

/** The temperature loggers of a site; a new one's token is shown here once and never again. */
export function LoggerBlock({ site, zone }: LoggerBlockProps) {
  const { me } = useSignedIn();
  const { send } = useSends();
  const may = me.role === 'office' || me.role === 'foreman';
  if (!may && site.loggers.length === 0) return null;
  return (
    <>
      <Sheet title="Temperature loggers" heads={['Logger', 'Last post', 'State']}>
        {site.loggers.map(({ id, name, lastPostAt, revokedAt, revision }) => (
          <tr key={id}>
            <th scope="row">{name}</th>
            <td>{isoWords(lastPostAt, zone, 'never')}</td>
            <td>
              {revokedAt ? `revoked ${isoWords(revokedAt, zone)}` : 'may post'}{' '}
              {may && !revokedAt && (
                <button
                  type="button"
                  className="act"
                  onClick={() => void send('revokeLogger', `Revoke ${name}`, { loggerId: id, revision })}
                >
                  Revoke {name}
                </button>
              )}
            </td>
          </tr>
        ))}
        {site.loggers.length === 0 && (
          <tr>
            <td colSpan={3}>No logger is registered at this site.</td>
          </tr>
        )}
      </Sheet>
      {may && <Register siteId={site.id} />}
    </>
  );
}

/** Registering goes past the kept changes: a token must not be kept on this device. */
function Register({ siteId }: { readonly siteId: string }) {
  const { touch } = useLive();
  const [said, setSaid] = useState('');
  const register = async (event: FormEvent<HTMLFormElement>) => {
    event.preventDefault();
    const name = String(new FormData(event.currentTarget).get('name') ?? '');
    try {
      const input = { siteId, name, clientKey: crypto.randomUUID() };
      const { outcome } = await ask(RegisterLoggerDocument, { input });
      setSaid(
        'token' in outcome
          ? `Token of ${outcome.logger.name}, shown this once: ${outcome.token ?? ''}. It posts to ${outcome.path}.`
          : outcome.message,
      );
      touch();
    } catch (error) {
      setSaid(error instanceof Error ? error.message : String(error));
    }
  };
  return (
    <form className="check-form" onSubmit={(event) => void register(event)}>
      <label>
        Name of a new logger
        <input name="name" required maxLength={80} autoComplete="off" />
      </label>
      <button type="submit" className="act act-large">
        Register the logger
      </button>
      <p role="status">{said}</p>
    </form>
  );
}
