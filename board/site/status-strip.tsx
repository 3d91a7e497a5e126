import { useState } from 'react';
import { useLive } from '../api/live.js';
import { useOnline } from '../api/use-online.js';
import { isWaiting, OutcomeLine } from '../sends/outcome-list.js';
import { useSends } from '../sends/sends.js';
import { momentWords } from '../time/moment-words.js';
import './status-strip.css';

interface StatusStripProps {
  /** When the sheet was last heard from the service, in milliseconds since 1970; null while it never was. */
  readonly seenAt: number | null;
  readonly zone: string;
}

/** Always in sight: whether there is a signal, how old the sheet is, and how much is unsent. */
export function StatusStrip({ seenAt, zone }: StatusStripProps) {
  const { connected } = useLive();
  const online = useOnline();
  const { sends, unsent, unreadable } = useSends();
  const [open, setOpen] = useState(false);
  const waiting = sends.filter(isWaiting);
  return (
    <section className="status-strip" aria-label="Signal and unsent changes">
      <p role="status">
        {connected && online
          ? 'Live.'
          : `Not connected. ${seenAt === null ? 'Nothing seen yet.' : `As seen ${momentWords(seenAt, zone)}.`}`}
      </p>
      <button
        type="button"
        className={unsent > 0 ? 'act act-strong' : 'act'}
        aria-expanded={open}
        onClick={() => setOpen(!open)}
      >
        {unsent === 0 ? 'All sent' : `${unsent} unsent`}
      </button>
      {open && (
        <div className="unsent-list">
          <p>
            {unsent === 0
              ? 'Everything entered here has reached the service.'
              : 'Kept on this phone, and sent by itself in this order once there is a signal. Do not sign out or clear this browser before.'}
          </p>
          {unreadable > 0 && (
            <p className="fault">
              {unreadable} of them were made by a newer version of this page. Load the page again with a
              signal.
            </p>
          )}
          {waiting.toReversed().map((send) => (
            <OutcomeLine key={send.key} send={send} />
          ))}
        </div>
      )}
    </section>
  );
}
