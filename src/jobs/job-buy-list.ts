import { buyList } from '../../shared/entry/buying/buy-list.js';
import { checkMeasurement } from '../../shared/entry/measurement/check-measurement.js';
import type { Prisma } from '../generated/prisma/client.js';
import type { BuyLine } from './buy-line.model.js';

/** What to buy for a job as measured. */
export function jobBuyList(measurement: Prisma.JsonValue): BuyLine[] {
  const checked = checkMeasurement(measurement);
  if (!checked.ok) return [];
  return buyList(checked.measurement).map(({ source, ...line }) => ({
    ...line,
    mark: source.mark,
    source: source.text,
  }));
}
