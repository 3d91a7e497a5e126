import type { AlarmFieldsFragment } from '../api/documents.js';
import { isoWords } from '../time/moment-words.js';
import { findingWords } from '../words/finding-words.js';

interface AlarmListProps {
  readonly alarms: readonly AlarmFieldsFragment[];
  readonly zone: string;
}

/** What must be minded at a placement, the most urgent first; each with its limit and where that comes from. */
export function AlarmList({ alarms, zone }: AlarmListProps) {
  if (alarms.length === 0) return null;
  return (
    <ul className="cure-alarms">
      {alarms.map(({ id, kind, openedAt, finding }) => (
        <li key={id} className={kind === 'protection-may-come-off' ? 'cure-leave' : 'cure-alarm'}>
          {findingWords(finding)} Since {isoWords(openedAt, zone)}.
        </li>
      ))}
    </ul>
  );
}
