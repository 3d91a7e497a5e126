import type { OutlookFieldsFragment } from '../api/documents.js';
import { isoWords } from '../time/moment-words.js';

interface CureTableProps {
  readonly title: string;
  readonly outlook: OutlookFieldsFragment;
  readonly zone: string;
}

/** A table has no more rows than a person reads. */
const MOST_ROWS = 24;

/** The drawing as a table, opened on demand. */
export function CureTable({ title, outlook, zone }: CureTableProps) {
  const every = Math.max(1, Math.ceil(outlook.points.length / MOST_ROWS));
  const rows = outlook.points.filter((_, i) => i % every === 0 || i === outlook.points.length - 1);
  return (
    <details className="cure-table">
      <summary>The same as a table</summary>
      <div className="cure-scroll" tabIndex={0} role="group" aria-label={`${title}, table`}>
        <table>
          <thead>
            <tr>
              <th scope="col">Time</th>
              <th scope="col">Basis</th>
              <th scope="col">Temperature</th>
              <th scope="col">Coldest part</th>
              <th scope="col">Air</th>
              <th scope="col">Strength</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((point) => (
              <tr key={point.at}>
                <th scope="row">{isoWords(point.at, zone)}</th>
                <td>{point.basis}</td>
                <td>{point.temperatureF} °F</td>
                <td>{point.coldestF} °F</td>
                <td>{point.airF === null ? '' : `${point.airF} °F`}</td>
                <td>{Math.floor(point.psi)} psi</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
