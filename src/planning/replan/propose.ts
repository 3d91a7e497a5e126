import type { Prisma, Proposal } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { sameDifferences } from './differences.js';
import { readDifferences, type StoredDifferences } from './stored-differences.js';

/**
 * Keeps the one open proposal in step with the plan: it stays while it says the same, is superseded when the plan differs otherwise, and
 * closed when nothing is left. What the office has just dropped is not asked again until it changes. Proposals of improved plans and of
 * tried moves have nothing to do with these.
 */
export async function propose(
  change: Change,
  differences: StoredDifferences,
  planNumber: number,
  cause: string,
): Promise<void> {
  const last = await change.tx.proposal.findFirst({
    where: { companyId: change.ctx.companyId, improvementId: null, moveId: null },
    orderBy: { number: 'desc' },
  });
  const settled = last && (last.state === 'open' || last.state === 'dropped');
  const known = settled && sameDifferences(readDifferences(last.differences), differences);
  if (known) return;
  if (last?.state === 'open') await supersede(change, last);
  if (differences.phases.length === 0) return;
  await openProposal(change, { differences, planNumber, cause, improvementId: null, moveId: null });
}

/** Closes an open proposal that no longer fits. */
export async function supersede(change: Change, { id, number }: Proposal): Promise<void> {
  await change.tx.proposal.update({
    where: { id },
    data: { state: 'superseded', decidedAt: change.now, revision: { increment: 1 } },
  });
  change.record({
    action: 'proposal superseded',
    subjectType: 'proposal',
    subjectId: id,
    detail: { number },
  });
}

/** Opens a proposal under the next number of the company. */
export async function openProposal(
  change: Change,
  {
    differences,
    ...rest
  }: Pick<Proposal, 'planNumber' | 'cause' | 'improvementId' | 'moveId'> & {
    readonly differences: StoredDifferences;
  },
): Promise<void> {
  const { tx, ctx, now } = change;
  const { companyId } = ctx;
  const last = await tx.proposal.findFirst({ where: { companyId }, orderBy: { number: 'desc' } });
  const number = (last?.number ?? 0) + 1;
  const made = await tx.proposal.create({
    data: {
      ...rest,
      companyId,
      number,
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
