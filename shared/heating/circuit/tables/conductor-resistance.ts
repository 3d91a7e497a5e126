import { ohms, ohmsPerFoot, type OhmsPerFoot } from '../../../units/electrical.js';
import { celsius, toFahrenheit, type Fahrenheit } from '../../../units/temperature.js';
import { COPPER_AT_75, resistanceAt } from '../../resistance.js';

/** How a conductor is made. */
export type Strand = 'solid' | 'stranded';

/** Uncoated copper, direct current, ohms in a thousand feet at 75 °C. Source: NEC chapter 9, Table 8. */
const COPPER: Readonly<Record<Strand, Readonly<Record<number, number>>>> = {
  solid: { 18: 7.77, 16: 4.89, 14: 3.07, 12: 1.93, 10: 1.21, 8: 0.764 },
  stranded: {
    18: 7.95,
    16: 4.99,
    14: 3.14,
    12: 1.98,
    10: 1.24,
    8: 0.778,
    6: 0.491,
    4: 0.308,
    3: 0.245,
    2: 0.194,
    1: 0.154,
  },
};

const TABLE_TEMPERATURE = toFahrenheit(celsius(75));

/** Ohms of a foot from ohms of a thousand feet. */
export const perThousandFeet = (value: number): OhmsPerFoot => ohmsPerFoot(value / 1000);

/**
 * Resistance of a foot of one copper conductor, at the table's 75 °C unless a temperature is given. Throws for a size that
 * the table does not have, saying which it has.
 */
export function conductorResistance(
  awg: number,
  strand: Strand,
  at: Fahrenheit = TABLE_TEMPERATURE,
): OhmsPerFoot {
  const listed = COPPER[strand][awg];
  if (listed === undefined) {
    const known = Object.keys(COPPER[strand]).reverse().join(', ');
    throw new RangeError(`no ${strand} copper of ${awg} AWG is in the table; it has ${known}`);
  }
  return perThousandFeet(resistanceAt(ohms(listed), TABLE_TEMPERATURE, at, COPPER_AT_75));
}
