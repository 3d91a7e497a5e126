import { OfferTables } from '../planning/offer-tables.js';
import { useDecide } from '../sends/use-decide.js';
import { isoWords } from '../time/moment-words.js';
import { JobEndRows } from '../planning/job-end-rows.js';
import type { Preview } from './preview.js';
import type { Moving, OfferedMove } from './use-moving.js';
import { previewWords } from './words/preview-words.js';
import './moving.css';

interface MoveBlockProps {
  readonly moving: Moving;
  /** The move asked for last. */
  readonly newest: OfferedMove | null;
  readonly zone: string;
}

/** Whether there is anything to say about moves: one in hand, one that waits, or one that has just ended. */
export const saysSomething = (moving: Moving, newest: OfferedMove | null): boolean =>
  moving.tried !== null || newest?.state === 'offered' || Boolean(newest?.proposal?.undoable);

/** The move in hand with what it would do; else the one that waits for a decision, or can still be undone. */
export function MoveBlock({ moving, newest, zone }: MoveBlockProps) {
  const { tried, phase, preview } = moving;
  return (
    <section className="block move" aria-label="Move" tabIndex={0}>
      <h2 className="caption">Move</h2>
      {tried && phase && (
        <>
          <p role="status">
            {preview
              ? previewWords(preview, `${phase.job.number} ${phase.name}`, zone)
              : 'This phase is no longer planned. Give it up and choose another.'}
          </p>
          <p className="decide">
            <button type="button" className="act act-strong" disabled={!preview} onClick={moving.drop}>
              Propose
            </button>
            <button type="button" className="act" onClick={moving.giveUp}>
              Give up
            </button>
          </p>
          <p>
            ← → a quarter of an hour of its hours, with Shift a day, Page Up and Page Down a week, Enter
            proposes, Escape gives up.
          </p>
          {preview && <Effects preview={preview} zone={zone} />}
        </>
      )}
      {!tried && newest?.state === 'offered' && <Offered move={newest} zone={zone} />}
      {!tried && newest?.proposal?.undoable && <Accepted move={newest} />}
    </section>
  );
}

/** What a move would do, beside what is in force. */
function Effects({ preview, zone }: { readonly preview: Preview; readonly zone: string }) {
  const { ends, broken, conflicts } = preview;
  return (
    <>
      {conflicts.length > 0 && (
        <ul className="move-conflicts">
          {conflicts.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
      {ends.length > 0 && (
        <table>
          <caption>Ends that would change</caption>
          <thead>
            <tr>
              <th scope="col">Job</th>
              <th scope="col">In force</th>
              <th scope="col">Then</th>
              <th scope="col">Difference</th>
            </tr>
          </thead>
          <JobEndRows ends={ends} none="none" zone={zone} />
        </table>
      )}
      {broken.length > 0 && (
        <>
          <h3>Promises that would move</h3>
          <ul>
            {broken.map(({ phaseId, name, crew }) => (
              <li key={phaseId}>
                {name}
                {crew && `, told to ${crew}`}
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}

/** The move that waits: compared with the plan in force, and decided. */
function Offered({ move, zone }: { readonly move: OfferedMove; readonly zone: string }) {
  const decideOn = useDecide();
  const { proposal } = move;
  if (!proposal || proposal.state !== 'open') return <p>{move.message}</p>;
  const decide = decideOn(proposal);
  return (
    <>
      <p>
        <b>No. {proposal.number}</b>, {isoWords(proposal.createdAt, zone)}: {proposal.cause}
      </p>
      <p className="decide">
        <button type="button" className="act act-strong" onClick={() => decide('acceptProposal', 'Accept')}>
          Accept the move
        </button>
        <button type="button" className="act" onClick={() => decide('dropProposal', 'Drop')}>
          Drop the move
        </button>
      </p>
      <OfferTables proposal={proposal} zone={zone} />
    </>
  );
}

/** The move that was accepted, while it can be undone. */
function Accepted({ move }: { readonly move: OfferedMove }) {
  const decideOn = useDecide();
  const { proposal, phase } = move;
  if (!proposal) return null;
  return (
    <>
      <p>
        No. {proposal.number} was accepted: {phase ? `${phase.job.number} ${phase.name}` : 'the phase'} has
        moved. Until something else changes it can be undone; whoever was told hears of the former dates
        again.
      </p>
      <p className="decide">
        <button type="button" className="act" onClick={() => decideOn(proposal)('undoProposal', 'Undo')}>
          Undo the move
        </button>
      </p>
    </>
  );
}
