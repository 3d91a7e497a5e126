import { Injectable } from '@nestjs/common';
import type { Authority, Inspection, Job, Prisma } from '../generated/prisma/client.js';
import type { Change } from '../platform/change/change.js';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { companyRow } from '../platform/database/company-row.js';
import { demandFound, demandRevision } from '../platform/outcomes/demand.js';
import { demandPast, refuseInput } from '../platform/outcomes/demand-past.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import { type Refusal, Refused } from '../platform/outcomes/refusal.js';
import { WrongState } from '../phases/phases.face.js';
import { demandVisitable } from './demand-visitable.js';
import {
  type BookInspectionInput,
  bookSchema,
  type FailInspectionInput,
  failSchema,
  type InspectionInput,
  type PassInspectionInput,
  passSchema,
  type RequestInspectionInput,
  requestSchema,
} from './inspection.inputs.js';
import type { InspectionChanged } from './inspection.outcomes.js';
import { INSPECTION_STEPS, type InspectionStep, NEXT_STEP } from './inspection-states.js';

type Answer = Promise<InspectionChanged | Refusal>;
type Visited = Inspection & { readonly authority: Authority | null; readonly job: Job };

/** Takes an inspection from the request to its result; a failed one is followed by a row of its own. */
@Injectable()
export class InspectionsService {
  constructor(private readonly changes: ChangeRunner) {}

  request(ctx: Context, input: RequestInspectionInput): Answer {
    return this.changes.run(ctx, { operation: 'requestInspection', input }, async (change) => {
      parseInput(requestSchema, input);
      const inspection = await demandStep(change, input, 'request');
      const requestedAt = demandPast(change, input.at);
      return step(change, inspection, 'request', { requestedAt });
    });
  }

  book(ctx: Context, input: BookInspectionInput): Answer {
    return this.changes.run(ctx, { operation: 'bookInspection', input }, async (change) => {
      const { visitFrom, visitTo } = parseInput(bookSchema, input);
      const inspection = await demandStep(change, input, 'book');
      if (inspection.authority)
        demandVisitable(inspection.authority, inspection.requestedAt ?? change.now, visitFrom, visitTo);
      return step(change, inspection, 'book', { visitFrom, visitTo });
    });
  }

  /** Records a pass and releases the hold point that waited for it. */
  pass(ctx: Context, input: PassInspectionInput): Answer {
    return this.changes.run(ctx, { operation: 'passInspection', input }, async (change) => {
      const { inspector, note } = parseInput(passSchema, input);
      const inspection = await demandStep(change, input, 'pass');
      const resultAt = demandResultTime(change, inspection, input.at);
      await change.tx.holdPoint.updateMany({
        where: { companyId: change.ctx.companyId, inspectionId: inspection.id },
        data: {
          state: 'released',
          reason: note || null,
          decidedById: change.ctx.personId,
          decidedAt: resultAt,
          revision: { increment: 1 },
        },
      });
      return step(change, inspection, 'pass', { resultAt, inspector, note: note || null });
    });
  }

  /** Records a failure, makes the re-inspection and moves the hold point to it. */
  fail(ctx: Context, input: FailInspectionInput): Answer {
    return this.changes.run(ctx, { operation: 'failInspection', input }, async (change) => {
      const { inspector, note } = parseInput(failSchema, input);
      const inspection = await demandStep(change, input, 'fail');
      const resultAt = demandResultTime(change, inspection, input.at);
      const { companyId, jobId, phaseId, authorityId, key, title, attempt } = inspection;
      const next = await change.tx.inspection.create({
        data: {
          companyId,
          jobId,
          phaseId,
          authorityId,
          key,
          title,
          attempt: attempt + 1,
          previousId: inspection.id,
        },
      });
      await change.tx.holdPoint.updateMany({
        where: { companyId, inspectionId: inspection.id },
        data: {
          inspectionId: next.id,
          state: 'refused',
          reason: note,
          decidedById: change.ctx.personId,
          decidedAt: resultAt,
          revision: { increment: 1 },
        },
      });
      return step(change, inspection, 'fail', { resultAt, inspector, note }, next.id);
    });
  }
}

async function demandStep(change: Change, input: InspectionInput, taken: InspectionStep): Promise<Visited> {
  const found = await change.tx.inspection.findFirst({
    where: companyRow(change, input.inspectionId),
    include: { authority: true, job: true },
  });
  const inspection = demandFound(found, 'inspection');
  demandRevision(inspection, input.revision, 'inspection');
  if (inspection.job.state === 'cancelled')
    throw new Refused(
      new WrongState('cancelled', `Job ${inspection.job.number} is cancelled; no visit is needed.`),
    );
  if (!INSPECTION_STEPS[taken].from.includes(inspection.state))
    throw new Refused(
      new WrongState(inspection.state, `${inspection.title}: ${NEXT_STEP[inspection.state]}`),
    );
  return inspection;
}

/** When the result was given: in the past, and not before the booked window began. */
function demandResultTime(change: Change, inspection: Visited, given: Date | null | undefined): Date {
  const at = demandPast(change, given);
  const from = inspection.visitFrom;
  if (from && at < from)
    refuseInput(
      'at',
      `The visit is booked from ${from.toISOString()}; book the earlier window first, or correct the time.`,
    );
  return at;
}

async function step(
  change: Change,
  inspection: Visited,
  taken: InspectionStep,
  data: Prisma.InspectionUpdateInput & { note?: string | null },
  nextId: string | null = null,
): Promise<{ inspectionId: string; nextId: string | null }> {
  const { to } = INSPECTION_STEPS[taken];
  await change.tx.inspection.update({
    where: { id: inspection.id },
    data: { ...data, state: to, revision: { increment: 1 } },
  });
  change.record({
    action: `inspection ${to}`,
    subjectType: 'inspection',
    subjectId: inspection.id,
    jobId: inspection.jobId,
    detail: { title: inspection.title, attempt: inspection.attempt, ...(nextId && { nextId }) },
    reason: data.note ?? null,
  });
  return { inspectionId: inspection.id, nextId };
}
