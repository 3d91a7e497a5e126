import { Injectable } from '@nestjs/common';
import { z } from 'zod';
import type { Clearance, Job } from '../../generated/prisma/client.js';
import { WrongState } from '../../phases/phases.face.js';
import type { Change } from '../../platform/change/change.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { InvalidInput } from '../../platform/outcomes/invalid-input.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { demandLive } from '../demand-job.js';
import { expectedAt, hasLapsed, usualLapse } from './clearance-dates.js';
import type { RecordClearanceInput, RequestClearanceInput } from './clearances.inputs.js';

const referenced = z.object({
  reference: z
    .string()
    .trim()
    .max(80, { error: 'has at most 80 characters' })
    .nullish()
    .transform((text) => text || null),
});

/** Leave from outside: asked for, given, renewed. */
@Injectable()
export class ClearancesService {
  constructor(private readonly changes: ChangeRunner) {}

  /**
   * Notes that a clearance was asked for now. One that lives only so long may be asked for anew while it still
   * stands, and goes on standing; a lapsed one closes its gates until the new one is recorded.
   */
  request(ctx: Context, input: RequestClearanceInput) {
    return this.changes.run(ctx, { operation: 'requestClearance', input }, async (change) => {
      const { now, tx } = change;
      const clearance = await demandClearance(change, input.clearanceId, input.revision);
      demandAskable(clearance);
      const stands = clearance.state === 'cleared' && !hasLapsed(clearance, now);
      await tx.clearance.update({
        where: { id: clearance.id },
        data: {
          requestedAt: now,
          expectedAt: expectedAt(clearance, now),
          revision: { increment: 1 },
          ...(stands ? {} : { state: 'requested', clearedAt: null, lapsesAt: null }),
        },
      });
      if (!stands) await reopenGates(change, clearance);
      change.record({
        action: stands ? 'clearance asked for anew' : 'clearance requested',
        subjectType: 'clearance',
        subjectId: clearance.id,
        jobId: clearance.jobId,
        detail: { title: clearance.title, expectedAt: expectedAt(clearance, now).toISOString() },
      });
      return { clearanceId: clearance.id };
    });
  }

  /** Notes that a clearance was given, or material came, and releases the hold points that wait for it. */
  record(ctx: Context, input: RecordClearanceInput) {
    return this.changes.run(ctx, { operation: 'recordClearance', input }, async (change) => {
      const { now, tx } = change;
      const clearance = await demandClearance(change, input.clearanceId, input.revision);
      const { reference } = parseInput(referenced, input);
      const clearedAt = input.clearedAt ?? now;
      const lapsesAt = input.lapsesAt ?? usualLapse(clearance, clearedAt);
      demandDates(clearedAt, lapsesAt, now);
      await tx.clearance.update({
        where: { id: clearance.id },
        data: { state: 'cleared', clearedAt, lapsesAt, reference, revision: { increment: 1 } },
      });
      await tx.holdPoint.updateMany({
        where: { clearanceId: clearance.id, kind: 'clearance', state: { in: ['open', 'refused'] } },
        data: {
          state: 'released',
          decidedAt: now,
          decidedById: ctx.personId || null,
          revision: { increment: 1 },
        },
      });
      change.record({
        action: 'clearance recorded',
        subjectType: 'clearance',
        subjectId: clearance.id,
        jobId: clearance.jobId,
        detail: { title: clearance.title, reference, lapsesAt: lapsesAt?.toISOString() ?? null },
      });
      return { clearanceId: clearance.id };
    });
  }
}

async function demandClearance(
  change: Change,
  id: string,
  revision: number | null | undefined,
): Promise<Clearance & { job: Job }> {
  const row = await change.tx.clearance.findFirst({ where: companyRow(change, id), include: { job: true } });
  const clearance = demandFound(row, 'clearance');
  demandRevision(clearance, revision, 'clearance');
  demandLive(clearance.job);
  return clearance;
}

/** @throws Refused with WrongState when it is on its way already, or was given and does not lapse. */
function demandAskable({ state, title, lifeDays, lapsesAt }: Clearance): void {
  if (state === 'needed') return;
  if (state === 'requested') {
    throw new Refused(new WrongState(state, `${title} is requested already; record it when it is given.`));
  }
  if (lifeDays !== null || lapsesAt !== null) return;
  throw new Refused(
    new WrongState(state, `${title} was given and does not lapse; there is nothing to ask for.`),
  );
}

/** @throws Refused with InvalidInput */
function demandDates(clearedAt: Date, lapsesAt: Date | null, now: Date): void {
  const faults = [];
  if (clearedAt.getTime() > now.getTime()) {
    faults.push({ path: 'clearedAt', message: 'lies ahead; record a clearance when it has been given.' });
  }
  if (lapsesAt && lapsesAt.getTime() <= clearedAt.getTime()) {
    faults.push({ path: 'lapsesAt', message: 'must be after clearedAt; read the date on the paper again.' });
  }
  if (faults.length > 0) throw new Refused(new InvalidInput(faults));
}

/** A released clearance gate of a phase still ahead closes again when its clearance has run out. */
async function reopenGates({ tx }: Change, clearance: Clearance): Promise<void> {
  await tx.holdPoint.updateMany({
    where: { clearanceId: clearance.id, kind: 'clearance', state: 'released', phase: { state: 'waiting' } },
    data: { state: 'open', decidedAt: null, decidedById: null, revision: { increment: 1 } },
  });
}
