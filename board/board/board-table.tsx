import type { BoardPhaseFragment } from '../api/documents.js';
import { momentWords } from '../time/moment-words.js';
import { barTimes } from './layout/bar-times.js';
import { committedRule } from './layout/committed-rule.js';
import type { BoardData, BoardRow, RowsBy } from './layout/rows.js';
import { gateWords } from '../words/gate-words.js';
import { crewWords, phaseTitle, stateWords } from '../words/phase-words.js';
import './board-table.css';

interface BoardTableProps {
  readonly rows: readonly BoardRow[];
  readonly board: BoardData;
  readonly by: RowsBy;
  readonly zone: string;
}

/** The same phases as a table, for print and for those who rather read than look. */
export function BoardTable({ rows, board, by, zone }: BoardTableProps) {
  return (
    // A region that scrolls sideways on small screens must be reachable by keyboard.
    <div className="board-table" tabIndex={0} role="region" aria-label={`Phases by ${by}, as a table`}>
      {rows.map((row) => (
        <table key={row.id}>
          <caption>
            {row.job ? `${row.job.number} ${row.title}, ${row.note}` : `${row.title}: ${row.note}`}
          </caption>
          <thead>
            <tr>
              <th scope="col">Phase</th>
              <th scope="col">State</th>
              <th scope="col">Start</th>
              <th scope="col">Finish</th>
              <th scope="col">{by === 'job' ? 'Crew' : 'Job'}</th>
              <th scope="col">Committed start</th>
              <th scope="col">Hold points</th>
            </tr>
          </thead>
          <tbody>
            {row.phases.map((phase) => (
              <PhaseRow key={phase.id} phase={phase} board={board} by={by} zone={zone} />
            ))}
            {row.phases.length === 0 && (
              <tr>
                <td colSpan={7}>nothing in these days</td>
              </tr>
            )}
          </tbody>
        </table>
      ))}
    </div>
  );
}

function PhaseRow({
  phase,
  board,
  by,
  zone,
}: Omit<BoardTableProps, 'rows'> & { readonly phase: BoardPhaseFragment }) {
  const times = barTimes(phase, Date.parse(board.now));
  const rule = times && committedRule(phase, times);
  return (
    <tr>
      <th scope="row">{phaseTitle(phase)}</th>
      <td>
        {stateWords(phase)}
        {phase.planned?.weatherUnknown && phase.state === 'waiting' && ', weather unknown'}
      </td>
      <td>{times ? momentWords(times.from, zone) : 'not planned'}</td>
      <td>{times ? momentWords(times.to, zone) : 'not planned'}</td>
      <td>{by === 'job' ? crewWords(phase) : phase.job.number}</td>
      <td>{rule ? momentWords(rule.from, zone) : phase.commitment ? 'as planned' : 'none'}</td>
      <td>{phase.holdPoints.map(gateWords).join('; ') || 'none'}</td>
    </tr>
  );
}
