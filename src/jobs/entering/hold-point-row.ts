import type { HoldPointItem } from '../../../shared/entry/hold-points/item.js';
import { COMMON_PRACTICE } from '../../../shared/entry/source.js';
import type { DraftHoldPoint } from '../../../shared/entry/template/draft.js';
import type { Prisma } from '../../generated/prisma/client.js';

/** Id of the item that carries the strength a cure must reach. */
export const STRENGTH_ITEM = 'strength';

/**
 * The items of a hold point as stored. The strength that a cure must reach is one of them, so that it stands on the
 * job and not only in the template; nobody types it in, the temperatures give it.
 */
export function storedItems({ items, requiredPsi }: DraftHoldPoint): Prisma.InputJsonArray {
  const strength: HoldPointItem[] =
    requiredPsi === null
      ? []
      : [
          {
            id: STRENGTH_ITEM,
            label: 'Strength by the measured temperatures',
            unit: 'psi',
            limit: { atLeast: requiredPsi },
            required: false,
            source: COMMON_PRACTICE,
          },
        ];
  return [...items, ...strength] as unknown as Prisma.InputJsonArray;
}
