import type { EntryPlanDraft } from '../../../shared/entry/template/draft.js';
import type { Change } from '../../platform/change/change.js';
import { InvalidInput } from '../../platform/outcomes/invalid-input.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { DraftIds } from './draft-ids.js';

/**
 * The company's pools that a draft holds equipment of, by kind.
 *
 * @throws Refused with InvalidInput when the company owns none of a kind, or the template holds one kind twice from one phase.
 */
export async function equipmentOfDraft(
  { ctx, tx }: Change,
  { equipmentHolds }: EntryPlanDraft,
): Promise<DraftIds> {
  const kinds = [...new Set(equipmentHolds.map(({ pool }) => pool))];
  const rows = await tx.equipmentPool.findMany({ where: { companyId: ctx.companyId, kind: { in: kinds } } });
  const owned = new Set(rows.map(({ kind }) => kind));
  const missing = kinds
    .filter((kind) => !owned.has(kind))
    .map((kind) => ({
      path: 'templateId',
      message: `The template needs equipment of kind "${kind}" and the company has none; add it to the equipment first (a quantity of 0 will do to enter the job).`,
    }));
  const pairs = equipmentHolds.map(({ pool, from }) => `${pool} from ${from}`);
  const twice = [...new Set(pairs.filter((pair, index) => pairs.indexOf(pair) !== index))].map((pair) => ({
    path: 'templateId',
    message: `The template asks twice for ${pair}; make it one entry with the larger quantity.`,
  }));
  if (missing.length + twice.length > 0) throw new Refused(new InvalidInput([...missing, ...twice]));
  return new DraftIds(
    'equipment',
    rows.map(({ kind, id }) => ({ key: kind, id })),
  );
}
