import type { Prisma } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { sameDifferences } from './differences.js';
import { readDifferences, type StoredDifferences } from './stored-differences.js';

/**
 * Keeps the one open proposal in step with the plan: it stays while it says the same, is superseded when the plan differs otherwise, and
 * closed when nothing is left. What the office has just dropped is not asked again until it changes.
 */
export async function propose(
  change: Change,
  differences: StoredDifferences,
  planNumber: number,
  cause: string,
): Promise<void> {
  const { tx, ctx, now } = change;
  const last = await tx.proposal.findFirst({
    where: { companyId: ctx.companyId },
    orderBy: { number: 'desc' },
  });
  const settled = last && (last.state === 'open' || last.state === 'dropped');
  const known = settled && sameDifferences(readDifferences(last.differences), differences);
  if (known) return;
  if (last?.state === 'open') {
    await tx.proposal.update({
      where: { id: last.id },
      data: { state: 'superseded', decidedAt: now, revision: { increment: 1 } },
    });
    change.record({
      action: 'proposal superseded',
      subjectType: 'proposal',
      subjectId: last.id,
      detail: { number: last.number },
    });
  }
  if (differences.phases.length === 0) return;
  const number = (last?.number ?? 0) + 1;
  const made = await tx.proposal.create({
    data: {
      companyId: ctx.companyId,
      number,
      planNumber,
      cause,
      differences: differences as unknown as Prisma.InputJsonObject,
      createdAt: now,
    },
  });
  change.record({
    action: 'proposal opened',
    subjectType: 'proposal',
    subjectId: made.id,
    detail: { number, phases: differences.phases.length, jobs: differences.jobs.length },
  });
}
