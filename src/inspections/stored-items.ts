import type { HoldPointItem } from '../../shared/entry/hold-points/item.js';
import { sayLimit } from '../../shared/entry/hold-points/judge-item.js';
import type { HoldPoint } from '../generated/prisma/client.js';
import type { HoldPointItem as ItemModel } from './hold-point-item.model.js';

/** The items of a hold point as the core wrote them. */
export function itemsOf(point: Pick<HoldPoint, 'items'>): HoldPointItem[] {
  return point.items as unknown as HoldPointItem[];
}

/** An item as callers see it. */
export function itemModel(item: HoldPointItem): ItemModel {
  return {
    id: item.id,
    label: item.label,
    unit: item.unit,
    many: item.many === true,
    limitText: sayLimit(item.limit, item.unit ?? ''),
    required: item.required,
    mark: item.source.mark,
    source: item.source.text,
  };
}
