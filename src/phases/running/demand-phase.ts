import type { Job, Phase, PhaseState } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { WrongState } from '../errors/wrong-state.js';
import { type PhaseStep, sayInstead, stateAfter } from '../phase-states.js';

/** A phase that a step may be taken with. */
export interface SteppingPhase {
  readonly phase: Phase & { readonly job: Job };
  /** The state the step leads to. */
  readonly to: PhaseState;
}

/**
 * The phase that an input names, in a state that allows the step.
 *
 * @throws Refused when it is missing, was changed meanwhile, belongs to a cancelled job, or is in another state.
 */
export async function demandStep(
  change: Change,
  input: { readonly phaseId: string; readonly revision?: number | null },
  step: PhaseStep,
): Promise<SteppingPhase> {
  const found = await change.tx.phase.findFirst({
    where: companyRow(change, input.phaseId),
    include: { job: true },
  });
  const phase = demandFound(found, 'phase');
  demandRevision(phase, input.revision, 'phase');
  if (phase.job.state === 'cancelled')
    throw new Refused(
      new WrongState('cancelled', `Job ${phase.job.number} is cancelled; nothing runs there.`),
    );
  const to = stateAfter(step, phase.state);
  if (to === null) throw new Refused(new WrongState(phase.state, sayInstead(phase.name, phase.state)));
  return { phase, to };
}
