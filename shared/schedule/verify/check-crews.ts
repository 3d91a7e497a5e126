import type { Book } from './book.js';
import { violation, type Violation } from './violation.js';

/** A fitting crew does each phase, and from now on no crew does two at once. */
export function checkCrews(book: Book): Violation[] {
  const found: Violation[] = [];
  const taken = new Map<string, { id: string; start: number; finish: number }[]>();
  for (const { phase, at } of book.placed()) {
    if (phase.duration.slots === 0) continue;
    const crew = book.input.crews.find(({ id }) => id === at.crewId);
    if (at.state === 'planned' && (phase.trade !== undefined || phase.crewId !== undefined)) {
      const fits =
        crew &&
        (phase.trade === undefined || crew.trades.includes(phase.trade)) &&
        (phase.crewId === undefined || phase.crewId === crew.id);
      if (!fits) found.push(violation('crew', at.id, `${at.crewId} cannot do it`));
    }
    if (!crew || at.finish <= at.start) continue;
    const list = taken.get(crew.id) ?? [];
    for (const other of list) {
      const meet = other.start < at.finish && at.start < other.finish;
      const past = Math.min(other.finish, at.finish) <= book.input.now;
      const owned = book.says(
        'crewDoubled',
        (c) => c.crewId === crew.id && (c.phaseIds.includes(at.id) || c.phaseIds.includes(other.id)),
      );
      if (meet && !past && !owned)
        found.push(violation('crew', crew.id, `on ${other.id} and ${at.id} at once`));
    }
    list.push({ id: at.id, start: at.start, finish: at.finish });
    taken.set(crew.id, list);
  }
  return found;
}
