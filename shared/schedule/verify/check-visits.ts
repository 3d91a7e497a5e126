import type { Inspection, PlannedInspection } from '../model.js';
import type { Book } from './book.js';
import { violation, type Violation } from './violation.js';

/** A visit comes after its work, in visiting hours, with the notice given. */
export function checkVisits(book: Book): Violation[] {
  return book.input.inspections.flatMap((inspection) => {
    const planned = book.plan.inspections.find(({ id }) => id === inspection.id);
    if (!planned) return [violation('visit', inspection.id, 'is missing')];
    if (planned.start === null || planned.finish === null || inspection.state.kind === 'passed') return [];
    const faults = visitFaults(book, inspection, planned.start, planned.finish, planned);
    return faults.map((text) => violation('visit', inspection.id, text));
  });
}

function visitFaults(
  book: Book,
  inspection: Inspection,
  start: number,
  finish: number,
  planned: PlannedInspection,
): string[] {
  const faults: string[] = [];
  for (const id of inspection.after) {
    const before = book.planned.get(id)?.finish ?? null;
    if (before === null || before > start) faults.push(`comes before ${id} is finished`);
  }
  const { state } = inspection;
  if (planned.state === 'booked') {
    const same = state.kind === 'booked' && state.from === start && state.to === finish;
    return same ? faults : [...faults, 'is not where it is booked'];
  }
  const hours = book.hours(inspection.calendarId);
  if (finish - start !== inspection.visit || hours.count(start, finish) < inspection.visit) {
    faults.push('is outside visiting hours');
  }
  const asked = state.kind === 'requested' ? state.at : book.input.now;
  const notice = inspection.noticeIn === 'working' ? hours.count(asked, start) : start - asked;
  if (notice < inspection.notice || start < book.input.now) faults.push('comes before its notice is over');
  return faults;
}
