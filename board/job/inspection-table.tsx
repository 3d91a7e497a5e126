import { isoWords } from '../time/moment-words.js';
import { INSPECTION_WORDS } from '../words/state-words.js';
import type { JobOfPage } from './job-types.js';
import { Sheet } from './sheet.js';

/** The visits of the authority: asked for, booked, and their results. */
export function InspectionTable({
  inspections,
  zone,
}: {
  readonly inspections: JobOfPage['inspections'];
  readonly zone: string;
}) {
  return (
    <Sheet title="Inspections" heads={['Inspection', 'Visit', 'State', 'When', 'Request by', 'Result']}>
      {inspections.map((visit) => (
        <tr key={visit.id}>
          <th scope="row">{visit.title}</th>
          <td>{visit.attempt}</td>
          <td>{INSPECTION_WORDS[visit.state]}</td>
          <td>
            {visit.visitFrom
              ? isoWords(visit.visitFrom, zone)
              : visit.plannedVisit
                ? `planned ${isoWords(visit.plannedVisit.startAt, zone)}`
                : 'no day yet'}
          </td>
          <td>
            {visit.state === 'needed' ? isoWords(visit.plannedVisit?.requestBy, zone, 'not planned') : ''}
          </td>
          <td>
            {visit.resultAt && isoWords(visit.resultAt, zone)}
            {visit.inspector && `, ${visit.inspector}`}
            {visit.note && `: ${visit.note}`}
          </td>
        </tr>
      ))}
    </Sheet>
  );
}
