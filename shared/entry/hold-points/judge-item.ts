import type { Finding } from '../rules/finding.js';
import { say } from '../rules/say.js';
import { HAIR, spread } from '../rules/spread.js';
import type { HoldPointItem, ItemLimit, MeasuredValue } from './item.js';

/** Holds what was measured for one item against its limit. A value of the wrong kind is never right. */
export function judgeItem(item: HoldPointItem, value: MeasuredValue): Finding {
  const faults = faultsOf(item, value);
  const unit = item.unit ?? '';
  return {
    rule: item.id,
    ok: faults.length === 0,
    measured: sayMeasured(value, unit),
    limit: sayLimit(item.limit, unit),
    source: item.source,
    text: faults.length === 0 ? `${item.label}: right` : `${item.label}: ${faults.join('; ')}`,
  };
}

/** The limit in words. */
export function sayLimit(limit: ItemLimit, unit: string): string {
  const { confirmed, atLeast, atMost, equalWithin } = limit;
  const words = [
    ...(confirmed ? ['confirmed'] : []),
    ...(atLeast === undefined ? [] : [`at least ${say(atLeast, unit)}`]),
    ...(atMost === undefined ? [] : [`at most ${say(atMost, unit)}`]),
    ...(equalWithin === undefined ? [] : [`equal within ${say(equalWithin, unit)}`]),
  ];
  return words.length === 0 ? 'recorded' : words.join(', ');
}

function faultsOf(item: HoldPointItem, value: MeasuredValue): string[] {
  if (item.limit.confirmed) return value === true ? [] : ['not confirmed; put it right, then confirm it'];
  if (typeof value === 'boolean') return [`enter a number${item.unit ? ` in ${item.unit}` : ''}`];
  const values = typeof value === 'number' ? [value] : value;
  if (values.length === 0) return ['enter at least one value'];
  if (!item.many && values.length > 1) return ['enter one value'];
  if (!values.every(Number.isFinite)) return ['enter finite numbers'];
  return [...boundFaults(values, item), ...spreadFault(values, item)];
}

function boundFaults(values: readonly number[], { limit, unit }: HoldPointItem): string[] {
  const { atLeast = -Infinity, atMost = Infinity } = limit;
  return values.flatMap((value, i) => {
    const which = values.length > 1 ? `value ${i + 1}, ` : '';
    if (value < atLeast - HAIR)
      return [`${which}${say(value, unit ?? '')} is under ${say(atLeast, unit ?? '')}`];
    return value > atMost + HAIR
      ? [`${which}${say(value, unit ?? '')} is over ${say(atMost, unit ?? '')}`]
      : [];
  });
}

function spreadFault(values: readonly number[], { limit, unit }: HoldPointItem): string[] {
  const found = spread(values);
  if (limit.equalWithin === undefined || found <= limit.equalWithin + HAIR) return [];
  return [`values differ by ${say(found, unit ?? '')}, more than ${say(limit.equalWithin, unit ?? '')}`];
}

const sayMeasured = (value: MeasuredValue, unit: string): string => {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'number' ? say(value, unit) : value.map((one) => say(one, unit)).join(', ');
};
