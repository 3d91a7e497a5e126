import { measuredStrengthOf } from '../../cure/cure.face.js';
import type { Change } from '../../platform/change/change.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { CureNotReached } from '../errors/cure-not-reached.js';
import { itemsOf } from '../stored-items.js';
import type { GatedHoldPoint } from './hold-point-with-gate.js';

/**
 * A cure is released on measured temperatures that reach the required strength, in every placement of the phase that
 * placed it. A prediction never releases it.
 *
 * @throws Refused with CureNotReached and the numbers of the weakest placement.
 */
export async function demandCure(change: Change, point: GatedHoldPoint): Promise<void> {
  const placements = await change.tx.placement.findMany({
    where: { companyId: change.ctx.companyId, phaseId: point.placementPhaseId ?? point.phaseId },
    include: { readings: { orderBy: { at: 'asc' } } },
    orderBy: { id: 'asc' },
  });
  const asked = strengthAsked(point);
  const decide = 'Or decide it by name and reason with a waiver.';
  if (placements.length === 0) {
    const message = `No placement is recorded for ${point.title}: record it and read its temperatures. ${decide}`;
    throw new Refused(new CureNotReached(null, asked, message));
  }
  for (const placement of placements) {
    const required = Math.max(asked, placement.requiredPsi);
    const psi = measuredStrengthOf(placement, change.now)?.psi ?? null;
    if (psi !== null && psi >= required) continue;
    const found =
      psi === null ? 'No temperatures were read' : `The measured temperatures give ${Math.floor(psi)} psi`;
    const message = `${found}; ${required} psi are needed. Read its temperatures and wait until they reach it. ${decide}`;
    throw new Refused(new CureNotReached(psi, required, message));
  }
}

/** The strength the hold point itself asks for, from its items; 0 when only the placement says. */
function strengthAsked(point: GatedHoldPoint): number {
  const asked = itemsOf(point).flatMap(({ unit, limit }) => (unit === 'psi' ? [limit.atLeast ?? 0] : []));
  return Math.max(0, ...asked);
}
