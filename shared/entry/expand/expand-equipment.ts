import type { DraftEquipmentHold } from '../template/draft.js';
import type { TemplateEquipment } from '../template/template.js';
import type { ExpandedPhase } from './expanded-phase.js';

/** Equipment kept by each phase until the phase that lets it go, in the same area where both have one. */
export function expandEquipment(
  equipment: readonly TemplateEquipment[],
  phases: readonly ExpandedPhase[],
  cold: boolean,
): DraftEquipmentHold[] {
  return equipment.flatMap((need) => {
    if (need.season === 'cold' && !cold) return [];
    return phases
      .filter((phase) => phase.of.kind === need.from)
      .flatMap((from) => {
        const until = releasing(need.until, from, phases);
        const quantity = countOf(need, from);
        return until && quantity > 0 ? [{ pool: need.pool, quantity, from: from.key, until: until.key }] : [];
      });
  });
}

function releasing(
  kind: string,
  from: ExpandedPhase,
  phases: readonly ExpandedPhase[],
): ExpandedPhase | undefined {
  const candidates = phases.filter((phase) => phase.of.kind === kind);
  if (from.area === null) return candidates[0];
  return candidates.find((phase) => phase.area === null || phase.area.key === from.area?.key);
}

function countOf({ count }: TemplateEquipment, { quantities }: ExpandedPhase): number {
  return 'fixed' in count ? count.fixed : Math.ceil(quantities[count.quantity] * count.perUnit - 1e-9);
}
