import type { Field } from '../columns.js';

const TEMPERATURE: Readonly<Record<string, string>> = {
  degC: 'c',
  degF: 'f',
  '°C': 'c',
  '°F': 'f',
  C: 'c',
  F: 'f',
};
const SPEED: Readonly<Record<string, string>> = {
  'km_h-1': 'kmh',
  'km/h': 'kmh',
  'm_s-1': 'ms',
  'm/s': 'ms',
  mph: 'mph',
  'mp/h': 'mph',
  kn: 'kn',
  kt: 'kn',
};
const CHANCE: Readonly<Record<string, string>> = { percent: 'pct', '%': 'pct' };
/** A kilogram of water on a square metre stands a millimetre deep. */
const WATER: Readonly<Record<string, string>> = { mm: 'mm', 'kg_m-2': 'mm', in: 'in', inch: 'in' };

/** Name of a field in a forecast file, and the unit codes it is published in. */
const FIELDS: Readonly<Record<Field, readonly [string, Readonly<Record<string, string>>]>> = {
  temperature: ['temperature', TEMPERATURE],
  dewPoint: ['dew_point', TEMPERATURE],
  wind: ['wind', SPEED],
  gust: ['gust', SPEED],
  rainChance: ['rain_chance', CHANCE],
  rainAmount: ['rain', WATER],
};

/**
 * The column of a forecast file that takes values of a field in a published unit code: `wmoUnit:degC`, `unit:km_h-1`,
 * `°F`. Null for a code that is not known, or is of another kind: such values must not be guessed at.
 */
export function unitColumn(field: Field, code: string): string | null {
  const [name, units] = FIELDS[field];
  const bare = code.replace(/^(wmoUnit|unit):/, '');
  const unit = Object.hasOwn(units, bare) ? units[bare] : undefined;
  return unit === undefined ? null : `${name}_${unit}`;
}
