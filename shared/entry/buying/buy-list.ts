import type { EntryMeasurement } from '../measurement/measurement.js';
import { buyAmounts } from './buy-amounts.js';
import type { BuyKey, BuyLine, BuyRule } from './buy-item.js';
import { BUY_RULES } from './buy-rules.js';

/** What to buy for an entry, with waste and rounded up to whole pieces as sold; what it does not take is left out. */
export function buyList(
  measurement: EntryMeasurement,
  rules: Readonly<Record<BuyKey, BuyRule>> = BUY_RULES,
): BuyLine[] {
  const amounts = buyAmounts(measurement);
  return (Object.keys(rules) as BuyKey[])
    .filter((key) => amounts[key] > 0)
    .map((key) => buyLine(key, rules[key], amounts[key]));
}

/** One line. Throws on a rule that cannot be: no piece holds nothing, and no waste is less than none. */
export function buyLine(key: BuyKey, rule: BuyRule, measured: number): BuyLine {
  if (!(rule.holds > 0))
    throw new RangeError(`a ${rule.soldAs} must hold more than 0 ${rule.unit}, got ${rule.holds}`);
  if (!(rule.waste >= 0)) throw new RangeError(`waste is a fraction of 0 or more, got ${rule.waste}`);
  const needed = measured * (1 + rule.waste);
  return { ...rule, key, measured, needed, pieces: Math.ceil(needed / rule.holds - 1e-9) };
}
