import { Injectable } from '@nestjs/common';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import type { AssignCrewInput, PinPhaseInput } from './commitment.inputs.js';
import { demandCrewFor, demandOpenPhase, demandPlannable } from './demand-open-phase.js';

/** What the office fixes about a phase before it begins: its start, its crew. */
@Injectable()
export class PinsService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Fixes the start of a phase, or frees it. What the fixed start breaks shows as a conflict of the plan. */
  pin(ctx: Context, input: PinPhaseInput) {
    return this.changes.run(ctx, { operation: 'pinPhase', input }, async (change) => {
      const phase = await demandOpenPhase(change, input);
      const pinnedStart = input.startAt ?? null;
      if (pinnedStart) demandPlannable(change, 'startAt', pinnedStart);
      await change.tx.phase.update({
        where: { id: phase.id },
        data: { pinnedStart, revision: { increment: 1 } },
      });
      change.record({
        action: pinnedStart ? 'start fixed' : 'start freed',
        subjectType: 'phase',
        subjectId: phase.id,
        jobId: phase.jobId,
        detail: { phase: phase.name, startAt: pinnedStart?.toISOString() ?? null },
      });
      return { phaseId: phase.id };
    });
  }

  /** Requires a crew of the phase's trade, or lets the plan choose again. */
  assignCrew(ctx: Context, input: AssignCrewInput) {
    return this.changes.run(ctx, { operation: 'assignCrew', input }, async (change) => {
      const phase = await demandOpenPhase(change, input);
      const crew = input.crewId ? await demandCrewFor(change, phase, input.crewId) : null;
      await change.tx.phase.update({
        where: { id: phase.id },
        data: { requiredCrewId: crew?.id ?? null, revision: { increment: 1 } },
      });
      change.record({
        action: crew ? 'crew assigned' : 'crew freed',
        subjectType: 'phase',
        subjectId: phase.id,
        jobId: phase.jobId,
        detail: { phase: phase.name, crew: crew?.name ?? null },
      });
      return { phaseId: phase.id };
    });
  }
}
