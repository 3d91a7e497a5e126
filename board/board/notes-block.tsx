import type { BoardData } from './layout/rows.js';
import { barStop } from './layout/stops.js';

interface NotesBlockProps {
  readonly board: BoardData;
  readonly goTo: (stop: string) => void;
}

/** The conflicts of the plan, gathered as the numbered notes of the sheet. */
export function NotesBlock({ board, goTo }: NotesBlockProps) {
  const drawn = new Set(board.phases.map(({ id }) => id));
  return (
    <section className="block notes" aria-label="Conflicts" tabIndex={0}>
      <h2 className="caption">Conflicts</h2>
      {board.conflicts.length === 0 && <p>None.</p>}
      <ol>
        {board.conflicts.map(({ text, phase, job }, index) => (
          <li key={index}>
            {job && <b>{job.number} </b>}
            {text}{' '}
            {phase && drawn.has(phase.id) && (
              <button type="button" className="act act-inline" onClick={() => goTo(barStop(phase.id))}>
                show<span className="heard"> on the board: {text}</span>
              </button>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}
