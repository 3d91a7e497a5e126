import type { PhaseState } from '../generated/prisma/client.js';

/** What is done to a phase as the job runs. */
export type PhaseStep = 'start' | 'finish' | 'putBack' | 'progress';

/** The state each step leads to from each state it may be taken in; anything else is refused. */
export const PHASE_STEPS: Record<PhaseStep, Partial<Record<PhaseState, PhaseState>>> = {
  start: { waiting: 'started' },
  finish: { started: 'done' },
  putBack: { started: 'waiting', done: 'started' },
  progress: { started: 'started' },
};

/** What to do from each state instead of a step that it does not allow. */
const INSTEAD: Record<PhaseState, string> = {
  waiting: 'has not started; start it first',
  started: 'has started already; finish it, or put it back if that was wrong',
  done: 'is done; put it back if that was wrong',
  dropped: 'was taken out of the job; add a phase if the work is wanted after all',
};

/** The state a step leads to; null when it may not be taken. */
export function stateAfter(step: PhaseStep, state: PhaseState): PhaseState | null {
  return PHASE_STEPS[step][state] ?? null;
}

/** A sentence that says why a step may not be taken and what to do instead. */
export function sayInstead(name: string, state: PhaseState): string {
  return `${name} ${INSTEAD[state]}.`;
}
