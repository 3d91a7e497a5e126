import type { Phase } from '../../generated/prisma/client.js';
import { WrongState } from '../errors/wrong-state.js';
import { localTime } from '../../platform/local-time.js';
import type { PhaseFacts } from '../facts/phase-facts.js';
import { messagesOf, type ObstacleCheck } from './obstacle.js';

/**
 * A wait lasts its time by the clock, unless the strength of a placement decides: then its hold point alone ends it,
 * earlier or later.
 */
export const waitNotOver: ObstacleCheck = {
  find: (facts, { gate, at }) => {
    const over = gate === 'finish' ? waitOver(facts) : null;
    if (!over || over <= at) return [];
    const message = `${facts.phase.name} lasts until ${localTime(over, facts.zone)}; finish it then.`;
    return [{ code: 'WrongState', message, liftedBy: null }];
  },
  refuse: (found, { phase }) => new WrongState(phase.state, messagesOf(found)),
};

/** When the time of a wait is over; null for work and for a wait that a strength ends. */
export function waitOver({ phase, holdPoints }: Pick<PhaseFacts, 'phase' | 'holdPoints'>): Date | null {
  if (phase.durationKind !== 'elapsed' || !phase.actualStart) return null;
  if (holdPoints.some(({ kind, gate }) => kind === 'cure' && gate === 'finish')) return null;
  return endOf(phase, phase.actualStart);
}

const endOf = ({ durationMinutes }: Phase, start: Date): Date =>
  new Date(start.getTime() + durationMinutes * 60_000);
