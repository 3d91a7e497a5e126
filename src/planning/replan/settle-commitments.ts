import type { Change } from '../../platform/change/change.js';

/** A promise ends with its phase: finished it is kept; dropped, or with its job given up, it is released. */
export async function settleCommitments({ tx, ctx }: Change): Promise<void> {
  const held = { companyId: ctx.companyId, state: 'held' } as const;
  await tx.commitment.updateMany({ where: { ...held, phase: { state: 'done' } }, data: { state: 'kept' } });
  await tx.commitment.updateMany({
    where: { ...held, phase: { OR: [{ state: 'dropped' }, { job: { state: 'cancelled' } }] } },
    data: { state: 'released' },
  });
}
