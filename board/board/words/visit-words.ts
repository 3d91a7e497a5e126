import { isoWords, momentWords } from '../../time/moment-words.js';
import { INSPECTION_WORDS } from '../../words/state-words.js';
import { type Visit, visitTime } from '../layout/visit-time.js';

/** "Footing inspection, booked, Tue 7 Jan 09:00". */
export function visitWords(visit: Visit, zone: string): string {
  const at = visitTime(visit);
  const again = visit.attempt > 1 ? `, visit ${visit.attempt}` : '';
  const when = at === null ? 'no day yet' : momentWords(at, zone);
  const request =
    visit.state === 'needed' && visit.plannedVisit
      ? `; request by ${isoWords(visit.plannedVisit.requestBy, zone)}`
      : '';
  return `${visit.title}${again}, ${INSPECTION_WORDS[visit.state]}, ${when}${request}`;
}
