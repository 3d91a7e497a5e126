import type { Phase, PlannedPhase } from '../model.js';
import type { Book } from './book.js';
import { violation, type Violation } from './violation.js';

/** What has happened stands, nothing unstarted lies in the past, pins and frozen commitments are kept or owned up to. */
export function checkFacts(book: Book): Violation[] {
  const found: Violation[] = [];
  for (const phase of book.input.phases) {
    const at = book.planned.get(phase.id);
    const faults = at ? factFaults(book, phase, at) : ['is missing from the plan'];
    found.push(...faults.map((text) => violation('facts', phase.id, text)));
  }
  if (book.plan.phases.length !== book.input.phases.length) {
    found.push(violation('facts', 'plan', 'has phases nobody asked for'));
  }
  return found;
}

function factFaults(book: Book, phase: Phase, at: PlannedPhase): string[] {
  const { facts, commitment } = phase;
  if (facts?.actualFinish !== undefined) {
    const kept = at.start === facts.actualStart && at.finish === facts.actualFinish && at.state === 'done';
    return kept ? [] : ['is not where it happened'];
  }
  if (facts?.actualStart !== undefined) {
    const kept = at.start === facts.actualStart && at.state === 'started' && at.finish !== null;
    return kept && at.finish >= book.input.now ? [] : ['does not go on from where it started'];
  }
  if (at.start === null || at.finish === null) return unplacedFaults(book, phase, at);
  const faults = at.start < book.input.now ? ['starts before now'] : [];
  if (at.finish > book.input.horizon) faults.push('ends after the horizon');
  if (facts?.pinnedStart !== undefined) {
    const moved = book.says('pinMoved', (c) => c.phaseId === at.id);
    return at.start === facts.pinnedStart || moved ? faults : [...faults, 'left its pin'];
  }
  if (commitment && commitment.start < book.input.freezeUntil) {
    const needsCrew = phase.duration.slots > 0 && (phase.trade ?? phase.crewId) !== undefined;
    const crewKept = !needsCrew || commitment.crewId === undefined || at.crewId === commitment.crewId;
    const possible = book.input.crews.some(
      (crew) =>
        crew.id === commitment.crewId &&
        (phase.crewId ?? crew.id) === crew.id &&
        (phase.trade === undefined || crew.trades.includes(phase.trade)),
    );
    const kept = at.start === commitment.start && (crewKept || !possible);
    if (!kept && !book.says('commitmentBroken', (c) => c.phaseId === at.id))
      faults.push('left its commitment');
  }
  return faults;
}

function unplacedFaults(book: Book, { commitment }: Phase, at: PlannedPhase): string[] {
  if (at.reason.kind !== 'unplanned') return ['has no place and no reason'];
  const { code } = at.reason;
  const faults: string[] = [];
  if (code !== 'predecessorUnplanned' && !book.plan.conflicts.some((conflict) => conflict.code === code)) {
    faults.push('hides why it has no place');
  }
  const frozen = commitment && commitment.start < book.input.freezeUntil;
  if (frozen && !book.says('commitmentBroken', (c) => c.phaseId === at.id))
    faults.push('lost its commitment');
  return faults;
}
