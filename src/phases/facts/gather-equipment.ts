import type { Transaction } from '../../platform/database/database.js';
import type { EquipmentFacts } from './phase-facts.js';

/** Equipment of one phase: what it takes, and the kinds of it. */
export interface PhaseEquipment {
  readonly facts: readonly EquipmentFacts[];
  readonly kinds: readonly string[];
}

/**
 * What each phase takes from the stock, and where the rest of the stock is: out from the start of a phase until the
 * finish of another, so finishing that one frees it.
 */
export async function gatherEquipment(
  tx: Transaction,
  companyId: string,
  phaseIds: readonly string[],
): Promise<Map<string, PhaseEquipment>> {
  const holds = await tx.equipmentHold.findMany({
    where: { companyId, fromPhaseId: { in: [...phaseIds] } },
    include: { pool: true },
    orderBy: { id: 'asc' },
  });
  const poolIds = [...new Set(holds.map(({ poolId }) => poolId))];
  const out = poolIds.length
    ? await tx.equipmentHold.findMany({
        where: {
          companyId,
          poolId: { in: poolIds },
          from: { state: { in: ['started', 'done'] } },
          until: { state: { in: ['waiting', 'started'] } },
        },
        include: { from: true },
        orderBy: [{ quantity: 'desc' }, { id: 'asc' }],
      })
    : [];
  const found = new Map<string, { facts: EquipmentFacts[]; kinds: string[] }>();
  for (const { poolId, fromPhaseId, quantity, pool } of holds) {
    const entry = found.get(fromPhaseId) ?? { facts: [], kinds: [] };
    const others = out.filter((hold) => hold.poolId === poolId && hold.fromPhaseId !== fromPhaseId);
    entry.kinds.push(pool.kind);
    entry.facts.push({
      poolId,
      poolName: pool.name,
      needed: quantity,
      owned: pool.quantity,
      out: others.map((hold) => ({ phase: hold.from, quantity: hold.quantity })),
    });
    found.set(fromPhaseId, entry);
  }
  return found;
}
