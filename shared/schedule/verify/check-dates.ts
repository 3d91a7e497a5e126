import type { Book } from './book.js';
import { violation, type Violation } from './violation.js';

/** Job finishes are their last phase's, missed promises are owned up to, and trails add up. */
export function checkDates(book: Book): Violation[] {
  const found: Violation[] = [];
  for (const job of book.plan.jobs) {
    const finishes = book.plan.phases.filter((p) => p.jobId === job.id).map((p) => p.finish);
    const placed = finishes.filter((finish) => finish !== null);
    const last = placed.length > 0 ? Math.max(...placed) : null;
    if (last !== job.finish || job.complete !== (placed.length === finishes.length)) {
      found.push(violation('dates', job.id, 'does not finish with its last phase'));
    }
    const due = book.input.jobs.find(({ id }) => id === job.id)?.due;
    if (
      due !== undefined &&
      last !== null &&
      last > due &&
      !book.says('dueMissed', (c) => c.jobId === job.id)
    ) {
      found.push(violation('dates', job.id, 'misses its due date and nobody says so'));
    }
  }
  for (const { at } of book.placed()) {
    let reached: number = at.ready ?? NaN;
    for (const step of at.trail) reached = step.from === reached && step.to > step.from ? step.to : NaN;
    if (reached !== at.start) found.push(violation('dates', at.id, 'its waits do not add up to its start'));
  }
  return found;
}
