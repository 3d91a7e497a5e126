import { ohms, type Ohms, type OhmsPerFoot } from '../units/electrical.js';
import type { Feet } from '../units/length.js';
import { degreesBetween, differenceToCelsius, type Fahrenheit } from '../units/temperature.js';

/** Temperature coefficient of copper at 75 °C, per kelvin: NEC chapter 9, note to Table 8, from memory. */
export const COPPER_AT_75 = 0.00323;

/** Resistance at `to` of a conductor that has `known` at `from`: R₂ = R₁[1 + a(T₂ − T₁)], a per kelvin at `from`. */
export function resistanceAt(known: Ohms, from: Fahrenheit, to: Fahrenheit, coefficient: number): Ohms {
  return ohms(known * (1 + coefficient * differenceToCelsius(degreesBetween(from, to))));
}

/** Both conductors of a cold lead: 2·L·r. */
export const leadResistance = (length: Feet, perFoot: OhmsPerFoot): Ohms => ohms(2 * length * perFoot);
