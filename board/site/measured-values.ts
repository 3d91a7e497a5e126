import type { ItemFieldsFragment, MeasuredValueInput } from '../api/documents.js';

/**
 * What was entered for each item. What is not a number is left out, so that the service names the item as missing
 * instead of a wrong value being taken.
 */
export function measuredValues(items: readonly ItemFieldsFragment[], form: FormData): MeasuredValueInput[] {
  return items.flatMap((item): MeasuredValueInput[] => {
    if (item.unit === null) return [{ itemId: item.id, confirmed: form.get(item.id) !== null }];
    const numbers = String(form.get(item.id) ?? '')
      .split(item.many ? /[\s;]+/ : /\s+/)
      .filter(Boolean)
      .map((text) => Number(text.replace(',', '.')));
    if (numbers.length === 0 || numbers.some((value) => !Number.isFinite(value))) return [];
    return [
      item.many ? { itemId: item.id, values: numbers } : { itemId: item.id, value: numbers[0] ?? null },
    ];
  });
}
