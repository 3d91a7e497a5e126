import type { Phase } from '../model.js';
import type { Book } from './book.js';
import { violation, type Violation } from './violation.js';

/** A fitting crew does each phase, and from now on no crew does two at once. */
export function checkCrews(book: Book): Violation[] {
  const found: Violation[] = [];
  const taken = new Map<string, Taken[]>();
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
      const meet = meets(book, other, { ...at, phase });
      const past = Math.min(other.finish, at.finish) <= book.input.now;
      const owned = book.says(
        'crewDoubled',
        (c) => c.crewId === crew.id && (c.phaseIds.includes(at.id) || c.phaseIds.includes(other.id)),
      );
      if (meet && !past && !owned)
        found.push(violation('crew', crew.id, `on ${other.id} and ${at.id} at once`));
    }
    list.push({ id: at.id, start: at.start, finish: at.finish, phase });
    taken.set(crew.id, list);
  }
  return found;
}

interface Taken {
  readonly id: string;
  readonly start: number;
  readonly finish: number;
  readonly phase: Phase;
}

/** Whether two stretches of one crew overlap, slot by slot, weather holds in which work lets its crew go left out. */
function meets(book: Book, a: Taken, b: Taken): boolean {
  const [from, to] = [Math.max(a.start, b.start), Math.min(a.finish, b.finish)];
  if (to <= from) return false;
  const letsGo = [a, b].filter(({ id, phase }) => {
    const pauses = phase.duration.kind === 'work' && phase.duration.mode === 'interruptible';
    return phase.keepsCrew === false && pauses && book.planned.get(id)?.state === 'planned';
  });
  const paused = letsGo.map(({ phase }) => [book.hours(null), book.hours(null, phase)] as const);
  for (let t = from; t < to; t++) {
    if (paused.every(([always, fair]) => always.count(t, t + 1) === fair.count(t, t + 1))) return true;
  }
  return false;
}
