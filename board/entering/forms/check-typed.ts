import type { FieldFaults, FormField, Values } from './field.js';
import { typedNumber } from './typed-number.js';

const UNIT_WORDS: Readonly<Record<string, string>> = { in: 'inches', ft: 'feet', h: 'hours', min: 'minutes' };

/** What can be said of a form without asking the service: what was left empty, and what is no number. */
export function checkTyped(fields: readonly FormField[], values: Values): FieldFaults {
  return Object.fromEntries(
    fields.flatMap((field) => {
      const fault = faultOf(field, (values[field.name] ?? '').trim());
      return fault === null ? [] : [[field.name, fault]];
    }),
  );
}

function faultOf(field: FormField, typed: string): string | null {
  const { label, unit, optional = false, text = false, whole = false } = field;
  const what = label.charAt(0).toLowerCase() + label.slice(1);
  const measured = unit ? `, in ${UNIT_WORDS[unit] ?? unit}` : '';
  if (typed === '') return optional ? null : `Enter the ${what}${measured}.`;
  if (text) return null;
  const number = typedNumber(typed);
  if (whole && !Number.isInteger(number)) return `Enter the ${what} as a whole number${measured}.`;
  if (number !== null) return null;
  return `Enter the ${what} as a number such as 7.5 or 7 1/2${measured}.`;
}
