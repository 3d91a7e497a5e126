import type { Conflict } from './send.js';

interface ConflictChoiceProps {
  readonly conflict: Conflict;
  readonly onTheirs: () => void;
  readonly onMine: () => void;
}

/** Both values of a field that two people set, and the choice of one; until it is made, theirs stands. */
export function ConflictChoice({ conflict, onTheirs, onMine }: ConflictChoiceProps) {
  const { field, theirs, mine, changedBy } = conflict;
  return (
    <>
      <p>The {field} was set by somebody else too. Nothing of either is lost: choose one.</p>
      <dl className="both-values">
        <dt>On record{changedBy && `, by ${changedBy}`}</dt>
        <dd>{theirs}</dd>
        <dt>Yours</dt>
        <dd>{mine}</dd>
      </dl>
      <p className="outcome-acts">
        <button type="button" className="act" onClick={onTheirs}>
          Keep what is on record
        </button>
        <button type="button" className="act act-strong" onClick={onMine}>
          Record mine instead
        </button>
      </p>
    </>
  );
}
