import { useSends } from './sends.js';
import type { Send, SendState } from './send.js';
import './outcome-list.css';

const HEADS: Record<SendState, string> = {
  sending: 'Sending',
  unsent: 'Not sent',
  refused: 'Refused',
  done: 'Done',
};

/** What came of each change, newest first; read out as it arrives. */
export function OutcomeList() {
  const { sends } = useSends();
  return (
    <section className="outcomes" aria-label="What came of your changes" aria-live="polite">
      {sends.map((send) => (
        <OutcomeLine key={send.key} send={send} />
      ))}
    </section>
  );
}

function OutcomeLine({ send }: { readonly send: Send }) {
  const { tryAgain, dismiss, send: sendChange } = useSends();
  const phaseId = markedPhase(send);
  return (
    <div className={`outcome outcome-${send.state}`}>
      <p className="outcome-head">
        <b>{HEADS[send.state]}:</b> {send.title}
      </p>
      {send.message && <p>{send.message}</p>}
      {send.details.length > 0 && (
        <ul>
          {send.details.map((detail) => (
            <li key={detail}>{detail}</li>
          ))}
        </ul>
      )}
      {send.state !== 'sending' && (
        <p className="outcome-acts">
          {send.state === 'unsent' && (
            <button type="button" className="act act-strong" onClick={() => tryAgain(send.key)}>
              Try again
            </button>
          )}
          {phaseId && (
            <button
              type="button"
              className="act"
              onClick={() => {
                dismiss(send.key);
                void sendChange('putBackPhase', `Put back: ${send.title}`, {
                  phaseId,
                  reason: 'Marked by mistake',
                });
              }}
            >
              Put back
            </button>
          )}
          <button type="button" className="act" onClick={() => dismiss(send.key)}>
            {send.state === 'unsent' ? 'Give up this change' : 'Put away'}
          </button>
        </p>
      )}
    </div>
  );
}

/** The phase that was started or finished just now, which can be put back where it was. */
function markedPhase({ change, state, input }: Send): string | null {
  if (state !== 'done' || (change !== 'startPhase' && change !== 'finishPhase')) return null;
  return String(input['phaseId']);
}
