import type { BoardPhaseFragment } from '../api/documents.js';
import type { BoardData } from '../board/layout/rows.js';
import { momentOfWall, wallTime } from '../time/wall-time.js';
import type { Moving } from './use-moving.js';

interface MoveFormProps {
  readonly phase: BoardPhaseFragment;
  readonly moving: Moving;
  readonly board: BoardData;
  readonly zone: string;
}

/** The way to move a phase without dragging: pick it up, and say when, how firmly and by which crew. */
export function MoveForm({ phase, moving, board, zone }: MoveFormProps) {
  const { tried, to } = moving;
  if (!moving.canMove(phase.id)) return null;
  if (tried?.phaseId !== phase.id) {
    return (
      <p className="decide">
        <button type="button" className="act" onClick={() => moving.pickUp(phase.id)}>
          Try another start
        </button>
      </p>
    );
  }
  const crews = board.crews.filter(({ trades }) => phase.trade !== null && trades.includes(phase.trade));
  return (
    <fieldset className="move-form">
      <legend>Another start</legend>
      <label>
        Start{' '}
        <input
          type="datetime-local"
          step={900}
          value={wallTime(tried.at, zone)}
          onChange={({ target }) => {
            const at = momentOfWall(target.value, zone);
            if (at !== null) to({ at });
          }}
        />
      </label>
      <label>
        Meant as{' '}
        <select
          value={tried.way}
          onChange={({ target }) => to({ way: target.value === 'fixed' ? 'fixed' : 'notBefore' })}
        >
          <option value="notBefore">no earlier than</option>
          <option value="fixed">fixed at</option>
        </select>
      </label>
      {crews.length > 1 && (
        <label>
          Crew{' '}
          <select value={tried.crewId ?? ''} onChange={({ target }) => to({ crewId: target.value || null })}>
            <option value="">as the plan has it</option>
            {crews.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </label>
      )}
    </fieldset>
  );
}
