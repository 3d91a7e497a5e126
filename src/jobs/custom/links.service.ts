import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import type { Phase } from '../../generated/prisma/client.js';
import { WrongState } from '../../phases/phases.face.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { InvalidInput } from '../../platform/outcomes/invalid-input.js';
import { orLeftOut } from '../../platform/outcomes/left-out.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { demandJob, demandLive } from '../demand-job.js';
import { demandPhase } from '../demand-phase.js';
import type { AddLinkInput, RemoveLinkInput } from './custom.inputs.js';
import { demandNoCycle } from './demand-no-cycle.js';
import { lagMinutes } from './phase-schema.js';

const lag = z.object({ lagMinutes: orLeftOut(lagMinutes) });

/** Adds and removes dependencies between the phases of a job. */
@Injectable()
export class LinksService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Adds a link; refused when phases would wait for each other. */
  add(ctx: Context, input: AddLinkInput) {
    return this.changes.run(ctx, { operation: 'addLink', input }, async (change) => {
      const from = await demandPhase(change, input.fromId);
      const to = await demandPhase(change, input.toId);
      demandLive(from.job);
      const data = {
        kind: input.kind,
        lagMinutes: parseInput(lag, input).lagMinutes ?? 0,
        lagIn: input.lagIn ?? 'elapsed',
      };
      if (from.jobId !== to.jobId) refuse('toId', 'is of another job; a link ties two phases of one job.');
      if (from.id === to.id) refuse('toId', 'is the same phase; a link ties two different ones.');
      demandOpen(from, ['waiting', 'started', 'done']);
      demandOpen(to, input.kind.endsWith('Start') ? ['waiting'] : ['waiting', 'started']);
      const same = { fromId: from.id, toId: to.id, kind: data.kind };
      if (await change.tx.link.findFirst({ where: same })) {
        refuse(
          'kind',
          `${to.name} has this link to ${from.name} already; remove it before adding another lag.`,
        );
      }
      await demandNoCycle(change, from.jobId, [from.id], [to.id]);
      const own = { companyId: ctx.companyId, jobId: from.jobId, origin: 'custom' as const };
      const link = await change.tx.link.create({ data: { ...own, ...same, ...data } });
      change.record({
        action: 'link added',
        subjectType: 'link',
        subjectId: link.id,
        jobId: link.jobId,
        detail: { from: from.name, to: to.name, ...data },
      });
      return { jobId: link.jobId, linkId: link.id };
    });
  }

  /** Removes a link. Hold points stay: what they guard is refused as before. */
  remove(ctx: Context, input: RemoveLinkInput) {
    return this.changes.run(ctx, { operation: 'removeLink', input }, async (change) => {
      const found = await change.tx.link.findFirst({
        where: companyRow(change, input.linkId),
        include: { from: true, to: true },
      });
      const link = demandFound(found, 'link');
      demandRevision(link, input.revision, 'link');
      demandLive(await demandJob(change, link.jobId));
      await change.tx.link.delete({ where: { id: link.id } });
      change.record({
        action: 'link removed',
        subjectType: 'link',
        subjectId: link.id,
        jobId: link.jobId,
        detail: { from: link.from.name, to: link.to.name, kind: link.kind, origin: link.origin },
      });
      return { jobId: link.jobId, linkId: link.id };
    });
  }
}

function refuse(path: string, message: string): never {
  throw new Refused(new InvalidInput([{ path, message }]));
}

function demandOpen(phase: Phase, states: readonly Phase['state'][]): void {
  if (states.includes(phase.state)) return;
  throw new Refused(
    new WrongState(
      phase.state,
      `${phase.name} is ${phase.state}; this link would come too late. Link a phase still ahead.`,
    ),
  );
}
