import type { PhaseFacts } from '../facts/phase-facts.js';
import { bindsStart, linkBound } from '../obstacles/link-bound.js';
import { waitOver } from '../obstacles/wait-not-over.js';

/** When a phase that nothing stands in the way of started by itself: with the last of what it waited for. */
export function startOfItself(facts: PhaseFacts, now: Date): Date | null {
  const { phase, hookup, holdPoints, predecessors } = facts;
  if (phase.durationKind === 'work') return hookup?.row.doneAt ?? null;
  const bounds = predecessors.filter(bindsStart).flatMap((one) => linkBound(one).from ?? []);
  const gates = holdPoints.filter(({ gate }) => gate === 'start').flatMap(({ decidedAt }) => decidedAt ?? []);
  return latest([...bounds, ...gates]) ?? now;
}

/**
 * When a phase that nothing stands in the way of finished by itself: with its time, and with the last of its hold
 * points. A recorded hookup without hold points is finished by hand.
 */
export function finishOfItself(facts: PhaseFacts): Date | null {
  const { phase, holdPoints, predecessors } = facts;
  if (!phase.actualStart) return null;
  const gates = holdPoints
    .filter(({ gate }) => gate === 'finish')
    .flatMap(({ decidedAt }) => decidedAt ?? []);
  if (phase.durationKind === 'work' && gates.length === 0) return null;
  const bounds = predecessors.filter((one) => !bindsStart(one)).flatMap((one) => linkBound(one).from ?? []);
  return latest([phase.actualStart, waitOver(facts) ?? phase.actualStart, ...gates, ...bounds]);
}

function latest(moments: readonly Date[]): Date | null {
  return moments.reduce<Date | null>((last, at) => (last === null || at > last ? at : last), null);
}
