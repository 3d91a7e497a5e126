import type { Finding } from '../../entry/rules/finding.js';
import { published } from '../../entry/source.js';
import { quantity, type Quantity } from '../../units/quantity.js';
import type { Hours } from '../../units/time.js';

/** Parts of carbon monoxide in a million of air. */
export type PartsPerMillion = Quantity<'ppm'>;

/** ppm from a bare number. */
export const partsPerMillion = (value: number): PartsPerMillion => quantity(value, 'ppm');

/** Some hours in one concentration. */
export interface Exposure {
  readonly hours: Hours;
  readonly concentration: PartsPerMillion;
}

const SHIFT = 8;
const CAUTION =
  'Unvented heaters: fresh air, 10 ft from tarpaulins, a monitor inside (29 CFR 1926.154). Anyone dizzy or with a headache goes out at once.';

/** Mean over a shift of 8 h; time not told counts as clean air, time beyond it counts on top. */
export const shiftMean = (exposure: readonly Exposure[]): PartsPerMillion =>
  partsPerMillion(exposure.reduce((sum, part) => sum + part.hours * part.concentration, 0) / SHIFT);

/** Carbon monoxide in an enclosure: 50 ppm over 8 h by OSHA; 35 ppm over 8 h and 200 ppm at any time by NIOSH. */
export function carbonMonoxide(exposure: readonly Exposure[]): Finding[] {
  const mean = shiftMean(exposure);
  const highest = exposure.reduce((top, { concentration }) => Math.max(top, concentration), 0);
  return [
    finding('carbon-monoxide-osha', mean, 50, 'over 8 h', 'OSHA, 29 CFR 1910.1000 and 1926.55'),
    finding('carbon-monoxide-niosh', mean, 35, 'over 8 h', 'NIOSH recommended limit'),
    finding('carbon-monoxide-ceiling', highest, 200, 'at any time', 'NIOSH ceiling'),
  ];
}

function finding(rule: string, measured: number, limit: number, over: string, source: string): Finding {
  const ok = measured <= limit;
  return {
    rule,
    ok,
    measured: `${Math.round(measured * 10) / 10} ppm ${over}`,
    limit: `at most ${limit} ppm ${over}`,
    source: published(source),
    text: ok ? 'Within the limit' : 'Get everyone out, open the enclosure, vent or replace the heater',
    caution: CAUTION,
  };
}
