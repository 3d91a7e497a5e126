import { ConflictChoice } from './conflict-choice.js';
import { useSends } from './sends.js';
import type { Send } from './send.js';
import './outcome-list.css';

const HEADS: Record<Send['state'], string> = {
  sending: 'Sending',
  unsent: 'Not sent',
  refused: 'Refused',
  conflict: 'Two values',
  done: 'Done',
};

interface OutcomeListProps {
  /** Leaves out what is only waiting its turn, where that is shown elsewhere. */
  readonly withoutWaiting?: boolean;
}

/** What came of each change, newest first; read out as it arrives. */
export function OutcomeList({ withoutWaiting = false }: OutcomeListProps) {
  const { sends, fault } = useSends();
  const shown = withoutWaiting ? sends.filter((send) => !isWaiting(send)) : sends;
  return (
    <section className="outcomes" aria-label="What came of your changes" aria-live="polite">
      {fault && <p className="fault">{fault}</p>}
      {shown.map((send) => (
        <OutcomeLine key={send.key} send={send} />
      ))}
    </section>
  );
}

/** Whether a change is sent by itself, so that nobody has to look at it. */
export const isWaiting = ({ state, held }: Send): boolean =>
  (state === 'unsent' || state === 'sending') && !held;

export function OutcomeLine({ send }: { readonly send: Send }) {
  const { tryAgain, dismiss, takeOwn, send: sendChange } = useSends();
  const phaseId = markedPhase(send);
  const { key, state, title, message, details, conflict } = send;
  return (
    <div className={`outcome outcome-${state}`}>
      <p className="outcome-head">
        <b>{HEADS[state]}:</b> {title}
      </p>
      {conflict && state === 'conflict' ? (
        <ConflictChoice conflict={conflict} onTheirs={() => dismiss(key)} onMine={() => takeOwn(send)} />
      ) : (
        message && <p>{message}</p>
      )}
      {details.length > 0 && (
        <ul>
          {details.map((detail) => (
            <li key={detail}>{detail}</li>
          ))}
        </ul>
      )}
      {state !== 'sending' && state !== 'conflict' && (
        <p className="outcome-acts">
          {state === 'unsent' && (
            <button type="button" className="act act-strong" onClick={() => tryAgain(key)}>
              Try again
            </button>
          )}
          {phaseId && (
            <button
              type="button"
              className="act"
              onClick={() => {
                dismiss(key);
                void sendChange('putBackPhase', `Put back: ${title}`, {
                  phaseId,
                  reason: 'Marked by mistake',
                });
              }}
            >
              Put back
            </button>
          )}
          <button type="button" className="act" onClick={() => dismiss(key)}>
            {state === 'unsent' ? 'Give up this change' : 'Put away'}
          </button>
        </p>
      )}
    </div>
  );
}

/** The phase that was started or finished just now, which can be put back where it was. */
function markedPhase({ change, state, input }: Send): string | null {
  return state === 'done' && change === 'markPhase' ? String(input['phaseId']) : null;
}
