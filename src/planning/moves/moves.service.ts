import { Injectable } from '@nestjs/common';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { demandCrewFor, demandOpenPhase, demandPlannable } from '../commitments/demand-open-phase.js';
import type { ProposeMoveInput } from './move.inputs.js';

/** Tries other starts. What a move does is worked out by the planning step of the same change, and waits as a proposal. */
@Injectable()
export class MovesService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Asks for a move; the one that was waiting gives way. */
  propose(ctx: Context, input: ProposeMoveInput) {
    return this.changes.run(ctx, { operation: 'proposeMove', input }, async (change) => {
      const { tx, now } = change;
      const { way, startAt } = input;
      const phase = await demandOpenPhase(change, input);
      demandPlannable(change, 'startAt', startAt);
      const crew = input.crewId ? await demandCrewFor(change, phase, input.crewId) : null;
      await tx.proposedMove.updateMany({
        where: { companyId: ctx.companyId, state: 'offered' },
        data: {
          state: 'dropped',
          endedAt: now,
          message: 'Another move was tried in its place.',
          revision: { increment: 1 },
        },
      });
      const made = await tx.proposedMove.create({
        data: {
          companyId: ctx.companyId,
          phaseId: phase.id,
          way,
          startAt,
          crewId: crew?.id ?? null,
          askedAt: now,
          askedById: ctx.personId || null,
        },
      });
      change.record({
        action: 'move tried',
        subjectType: 'phase',
        subjectId: phase.id,
        jobId: phase.jobId,
        detail: { phase: phase.name, way, startAt: startAt.toISOString(), crew: crew?.name ?? null },
      });
      return { moveId: made.id };
    });
  }
}
