import { isoWords } from '../time/moment-words.js';
import { CLEARANCE_WORDS } from '../words/state-words.js';
import type { JobOfPage } from './job-types.js';
import { Sheet } from './sheet.js';

/** Permits, mark-outs and deliveries, with the day on which they lapse. */
export function ClearanceTable({
  clearances,
  zone,
}: {
  readonly clearances: JobOfPage['clearances'];
  readonly zone: string;
}) {
  return (
    <Sheet title="Clearances" heads={['Clearance', 'State', 'Expected', 'Given', 'Lapses', 'Reference']}>
      {clearances.map((clearance) => (
        <tr key={clearance.id}>
          <th scope="row">{clearance.title}</th>
          <td>{CLEARANCE_WORDS[clearance.state]}</td>
          <td>{isoWords(clearance.expectedAt, zone, '')}</td>
          <td>{isoWords(clearance.clearedAt, zone, '')}</td>
          <td>{isoWords(clearance.lapsesAt, zone, '')}</td>
          <td>{clearance.reference}</td>
        </tr>
      ))}
    </Sheet>
  );
}
