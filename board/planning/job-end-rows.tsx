import { dayWords } from '../time/moment-words.js';
import { shiftWords } from './shift-words.js';
import type { Shifts } from './shifts.js';

interface JobEndRowsProps {
  readonly ends: Shifts['jobs'];
  /** What stands for an end that is not there. */
  readonly none: string;
  readonly zone: string;
}

/** Jobs with their end before and after a change, as the body of a table. */
export function JobEndRows({ ends, none, zone }: JobEndRowsProps) {
  const day = (at: number | null) => (at === null ? none : dayWords(at, zone));
  return (
    <tbody>
      {ends.map(({ key, name, before, after, laterMinutes, dueMissed }) => (
        <tr key={key}>
          <th scope="row">{name}</th>
          <td>{day(before)}</td>
          <td>{day(after)}</td>
          <td>
            {shiftWords(laterMinutes)}
            {dueMissed && ', due date missed'}
          </td>
        </tr>
      ))}
    </tbody>
  );
}
