import { firstFreezeOf, measuredReleaseOf, measuredStrengthOf } from '../../cure/cure.face.js';
import type { Change } from '../../platform/change/change.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { CureNotReached } from '../errors/cure-not-reached.js';
import { LimitExceeded } from '../errors/limit-exceeded.js';
import type { Finding } from '../finding.model.js';
import { findingOf } from '../finding-of.js';
import { itemsOf } from '../stored-items.js';
import type { GatedHoldPoint } from './hold-point-with-gate.js';

/**
 * A cure is released on measured temperatures that reach the required strength, in every placement of the phase that
 * placed it, and only if none of them froze too early. A prediction never releases it.
 *
 * @returns what was found, to be kept with the release: the strength of each placement and that it did not freeze.
 * @throws Refused with CureNotReached and the numbers of the placement that falls short, or with LimitExceeded for one
 * that froze.
 */
export async function demandCure(change: Change, point: GatedHoldPoint): Promise<Finding[]> {
  const placements = await change.tx.placement.findMany({
    where: { companyId: change.ctx.companyId, phaseId: point.placementPhaseId ?? point.phaseId },
    include: { readings: { orderBy: { at: 'asc' } } },
    orderBy: { id: 'asc' },
  });
  const asked = strengthAsked(point);
  const decide = 'Or decide it by name and reason with a waiver.';
  if (placements.length === 0) {
    const message = `No placement is recorded for ${point.title}: record it and read its temperatures. ${decide}`;
    throw new Refused(new CureNotReached(null, asked, null, message));
  }
  const kept: Finding[] = [];
  for (const placement of placements) {
    const required = Math.max(asked, placement.requiredPsi);
    const measured = measuredStrengthOf(placement, change.now, required);
    const finding = findingOf(measuredReleaseOf(placement, change.now, required));
    if (!measured?.reached) {
      const psi = measured?.strength ?? null;
      const found =
        psi === null ? 'No temperatures were read' : `The measured temperatures give ${Math.floor(psi)} psi`;
      const message = `${found}; ${required} psi are needed. Keep it warm, read its temperatures and wait. ${decide}`;
      throw new Refused(new CureNotReached(psi, required, finding, message));
    }
    const froze = firstFreezeOf(placement, change.now);
    if (!froze.ok) throw new Refused(new LimitExceeded([findingOf(froze)]));
    kept.push(finding, findingOf(froze));
  }
  return kept;
}

/** The strength the hold point itself asks for, from its items; 0 when only the placement says. */
function strengthAsked(point: GatedHoldPoint): number {
  const asked = itemsOf(point).flatMap(({ unit, limit }) => (unit === 'psi' ? [limit.atLeast ?? 0] : []));
  return Math.max(0, ...asked);
}
