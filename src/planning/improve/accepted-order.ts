import type { Change } from '../../platform/change/change.js';
import { readOrder } from './stored-outcome.js';

/** A search whose proposal was accepted in this change. */
export interface AcceptedOrder {
  readonly id: string;
  readonly order: readonly string[];
}

/** The order that the office has accepted and no plan has taken over yet; null when there is none. */
export async function acceptedOrder({ tx, ctx }: Change): Promise<AcceptedOrder | null> {
  const run = await tx.improvement.findFirst({
    where: { companyId: ctx.companyId, state: 'accepted', appliedPlan: null },
    select: { id: true, order: true },
  });
  const order = run && readOrder(run.order);
  return run && order ? { id: run.id, order } : null;
}

/** Notes which plan has taken over an order: from then on its dates keep it, and what is new is ranked by the usual rule. */
export async function noteApplied({ tx }: Change, id: string, planNumber: number): Promise<void> {
  await tx.improvement.update({ where: { id }, data: { appliedPlan: planNumber } });
}
