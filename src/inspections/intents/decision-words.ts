import type { HoldPointItem } from '../../../shared/entry/hold-points/item.js';
import type { MeasuredValueInput } from '../measured-value.input.js';

/** A decision on a hold point with what it rests on. */
export interface DecisionTold {
  readonly state: string;
  readonly values: readonly MeasuredValueInput[];
  readonly remark: string | null;
}

/** A decision in words: "released; Depth of the bottom: 49 in; ladder: yes; remark: north corner measured twice". */
export function decisionWords(
  { state, values, remark }: DecisionTold,
  items: readonly HoldPointItem[],
): string {
  const measured = values.flatMap((value) => {
    const item = items.find(({ id }) => id === value.itemId);
    return item ? [`${item.label}: ${valueWords(value, item.unit)}`] : [];
  });
  return [state, ...measured, ...(remark ? [`remark: ${remark}`] : [])].join('; ');
}

function valueWords({ value, values, confirmed }: MeasuredValueInput, unit: string | null): string {
  if (confirmed != null) return confirmed ? 'yes' : 'no';
  const numbers = values ?? (value == null ? [] : [value]);
  return `${numbers.join(', ')} ${unit ?? ''}`.trim();
}

/** One text for each decision that differs: the order of the values does not count, nor how absence is written. */
export function decisionText({ state, values, remark }: DecisionTold): string {
  if (state === 'open') return state;
  const sorted = values
    .map(({ itemId, value, values: many, confirmed }) => [
      itemId,
      value ?? null,
      many ?? null,
      confirmed ?? null,
    ])
    .sort(([a], [b]) => (String(a) < String(b) ? -1 : 1));
  return JSON.stringify([state, sorted, remark]);
}
