import { JobEndRows } from './job-end-rows.js';
import type { Shifts } from './shifts.js';

interface ShiftsTableProps {
  readonly shifts: Shifts;
  /** The change, as it goes on after "If". */
  readonly words: string;
  readonly zone: string;
}

/** What a change would do to every job. */
export function ShiftsTable({ shifts, words, zone }: ShiftsTableProps) {
  const { moved, conflictsCome, conflictsGo } = shifts;
  return (
    <>
      <p>
        If {words}: {moved} {moved === 1 ? 'phase moves' : 'phases move'}, {conflictsCome} conflicts come,{' '}
        {conflictsGo} go. Nothing is written.
      </p>
      {shifts.words.length > 0 && (
        <ul>
          {shifts.words.map((text, i) => (
            <li key={`${i} ${text}`}>{text}</li>
          ))}
        </ul>
      )}
      <table>
        <caption>Every job</caption>
        <thead>
          <tr>
            <th scope="col">Job</th>
            <th scope="col">Ends</th>
            <th scope="col">Would end</th>
            <th scope="col">Difference</th>
          </tr>
        </thead>
        <JobEndRows ends={shifts.jobs} none="no end" zone={zone} />
      </table>
    </>
  );
}
