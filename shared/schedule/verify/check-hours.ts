import type { Phase, PlannedPhase } from '../model.js';
import type { Book } from './book.js';
import { violation, type Violation } from './violation.js';

type Placed = PlannedPhase & { start: number; finish: number };

/** Work has its full length, runs only in open time and fair weather, and pauses only where it may. */
export function checkHours(book: Book): Violation[] {
  const found: Violation[] = [];
  for (const { phase, at } of book.placed()) {
    const forced = book.says('pinInClosedTime', (conflict) => conflict.phaseId === at.id);
    const faults = at.state === 'planned' ? plannedFaults(book, phase, at, forced) : [];
    found.push(...[...faults, ...segmentFaults(at)].map((text) => violation('hours', at.id, text)));
  }
  return found;
}

function plannedFaults(book: Book, phase: Phase, at: Placed, forced: boolean): string[] {
  const { duration } = phase;
  const own = book.hours(book.calendarIdOf(phase, at.crewId));
  const fair = book.hours(null, phase);
  const workable = book.hours(book.calendarIdOf(phase, at.crewId), phase);
  const length = at.finish - at.start;
  if (duration.slots === 0) {
    if (length !== 0) return ['a milestone has a length'];
    const shut = !workable.isOpen(at.start) && !workable.isOpen(at.start - 1);
    return shut && !forced ? ['a milestone lies in closed time'] : [];
  }
  const work = at.segments.reduce((sum, part) => sum + part.to - part.from, 0);
  if (work !== duration.slots) return [`${work} of ${duration.slots} slots are planned`];
  if (duration.kind === 'elapsed' || duration.mode === 'continuous') {
    if (length !== duration.slots || at.segments.length !== 1) return ['it is interrupted'];
    if (forced) return [];
    if (duration.kind === 'elapsed') {
      if (!own.isOpen(at.start)) return ['it starts in closed time'];
      return fair.count(at.start, at.finish) < length ? ['closing weather touches it'] : [];
    }
    return workable.count(at.start, at.finish) < length ? ['it runs in a closed window'] : [];
  }
  if (at.segments.some((part) => workable.count(part.from, part.to) < part.to - part.from)) {
    return ['it runs in a closed window'];
  }
  if (!forced && !workable.isOpen(at.start)) return ['it starts in closed time'];
  return workable.count(at.start, at.finish) === work ? [] : ['it rests in open time'];
}

function segmentFaults(at: Placed): string[] {
  let last = at.start;
  for (const { from, to } of at.segments) {
    if (from < last || to <= from || to > at.finish) return ['its stretches are out of order'];
    last = to;
  }
  return [];
}
