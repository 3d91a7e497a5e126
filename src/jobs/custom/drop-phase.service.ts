import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import type { Phase } from '../../generated/prisma/client.js';
import { HoldPointOpen } from '../../inspections/inspections.face.js';
import { WrongState } from '../../phases/phases.face.js';
import type { Change } from '../../platform/change/change.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { demandRevision } from '../../platform/outcomes/demand.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { demandLive } from '../demand-job.js';
import { demandPhase } from '../demand-phase.js';
import { reasonText } from '../reason-schema.js';
import { bridgeLinks } from './bridge-links.js';
import type { DropPhaseInput } from './custom.inputs.js';

/** Takes phases out of a job. */
@Injectable()
export class DropPhaseService {
  constructor(private readonly changes: ChangeRunner) {}

  /**
   * Takes out a phase that has not started. What waited for it now waits for what it waited for; an inspection or a
   * cable reading cannot be got rid of this way.
   */
  drop(ctx: Context, input: DropPhaseInput) {
    return this.changes.run(ctx, { operation: 'dropPhase', input }, async (change) => {
      const phase = await demandPhase(change, input.phaseId);
      demandRevision(phase, input.revision, 'phase');
      demandLive(phase.job);
      const { reason } = parseInput(z.object({ reason: reasonText }), input);
      await demandDroppable(change, phase);
      await closeGap(change, phase);
      await change.tx.equipmentHold.deleteMany({ where: { fromPhaseId: phase.id } });
      const holds = await change.tx.equipmentHold.findMany({ where: { untilPhaseId: phase.id } });
      for (const hold of holds) {
        await change.tx.equipmentHold.update({
          where: { id: hold.id },
          data: { untilPhaseId: hold.fromPhaseId },
        });
      }
      await change.tx.commitment.updateMany({
        where: { phaseId: phase.id, state: 'held' },
        data: { state: 'released' },
      });
      await change.tx.plannedPhase.deleteMany({ where: { phaseId: phase.id } });
      await change.tx.phase.update({
        where: { id: phase.id },
        data: { state: 'dropped', pinnedStart: null, note: reason, revision: { increment: 1 } },
      });
      change.record({
        action: 'phase dropped',
        subjectType: 'phase',
        subjectId: phase.id,
        jobId: phase.jobId,
        detail: { key: phase.key, name: phase.name, equipmentFreedEarlier: holds.length },
        reason,
      });
      return { phaseId: phase.id };
    });
  }
}

/** @throws Refused with WrongState or HoldPointOpen */
async function demandDroppable({ tx }: Change, phase: Phase): Promise<void> {
  if (phase.state !== 'waiting') {
    throw new Refused(
      new WrongState(
        phase.state,
        `${phase.name} is ${phase.state}; only a phase that has not started can be dropped.`,
      ),
    );
  }
  const hookup = await tx.hookup.findFirst({ where: { phaseId: phase.id }, include: { heatingSet: true } });
  if (hookup) {
    const message = `${phase.name} connects the heating set ${hookup.heatingSet.name} and cannot be dropped while the job has that set.`;
    throw new Refused(new WrongState(phase.state, message));
  }
  const points = await tx.holdPoint.findMany({
    where: { phaseId: phase.id, kind: { in: ['inspection', 'reading'] }, state: { not: 'released' } },
    orderBy: { id: 'asc' },
  });
  if (points.length > 0) {
    const titles = points.map(({ title }) => title).join('; ');
    const message = `${phase.name} carries ${titles}: an inspection or a cable reading is never left out. It must be released before the phase can be dropped.`;
    throw new Refused(
      new HoldPointOpen(
        points.map(({ id }) => id),
        message,
      ),
    );
  }
}

/** Links what came before to what came after, and removes the links of the phase. */
async function closeGap({ ctx, tx }: Change, phase: Phase): Promise<void> {
  const order = { orderBy: { id: 'asc' } } as const;
  const into = await tx.link.findMany({ where: { toId: phase.id }, ...order });
  const outOf = await tx.link.findMany({ where: { fromId: phase.id }, ...order });
  await tx.link.createMany({
    data: bridgeLinks(into, outOf).map((bridge) => ({
      companyId: ctx.companyId,
      jobId: phase.jobId,
      ...bridge,
      origin: 'custom' as const,
    })),
    skipDuplicates: true,
  });
  await tx.link.deleteMany({ where: { OR: [{ toId: phase.id }, { fromId: phase.id }] } });
}
