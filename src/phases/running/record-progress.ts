import type { Change } from '../../platform/change/change.js';
import { refuseInput } from '../../platform/outcomes/demand-past.js';
import { demandStep } from './demand-phase.js';

/** What a progress report says. */
export interface ProgressTold {
  readonly phaseId: string;
  readonly revision?: number | null;
  readonly remainingMinutes: number;
}

/** Notes how much work is left, as told from the site; the plan counts on from there. */
export async function recordProgress(change: Change, told: ProgressTold): Promise<{ phaseId: string }> {
  const { phase } = await demandStep(change, told, 'progress');
  if (phase.durationKind === 'elapsed')
    refuseInput('phaseId', `${phase.name} is a wait; the clock tells what is left of it.`);
  await change.tx.phase.update({
    where: { id: phase.id },
    data: { remainingMinutes: told.remainingMinutes, revision: { increment: 1 } },
  });
  change.record({
    action: 'progress told',
    subjectType: 'phase',
    subjectId: phase.id,
    jobId: phase.jobId,
    detail: { name: phase.name, remainingMinutes: told.remainingMinutes },
  });
  return { phaseId: phase.id };
}
