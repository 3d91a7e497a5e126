import { celsius, toKelvin, type Celsius } from '../units/temperature.js';
import { hours, type Hours } from '../units/time.js';
import { meanOf, type CureInterval } from './interval.js';

/** How much of an hour at the reference an hour at a temperature is worth. */
export type AgeRate = (temperature: Celsius) => number;

/** Gas constant, J/(mol·K). */
const GAS = 8.314;

const arrhenius = (q: number, temperature: number, reference: number): number =>
  Math.exp(-q * (1 / temperature - 1 / reference));

/**
 * Arrhenius with activation temperature `q` (K): exp[−Q(1/T − 1/Tₛ)]. ASTM C1074 takes 0 °C as 273 K, and so does
 * this; the rounding moves an age by less than a thousandth.
 */
export const arrheniusRate =
  (q: number, reference: Celsius): AgeRate =>
  (temperature) =>
    arrhenius(q, 273 + temperature, 273 + reference);

/**
 * Freiesleben Hansen and Pedersen: activation energy 33.5 kJ/mol from 20 °C up, and 1.47 kJ/mol more for each
 * degree below, so cold counts for less than in plain Arrhenius. Reference 20 °C.
 */
export const fhpRate: AgeRate = (temperature) => {
  const energy = 33_500 + 1_470 * Math.max(0, 20 - temperature);
  return arrhenius(energy / GAS, toKelvin(temperature), toKelvin(celsius(20)));
};

/** EN 1992-1-1 eq. B.10: exp[−(4000/(273 + T) − 13.65)]. It counts cold hours for more: an option, not the default. */
export const en1992Rate: AgeRate = (temperature) => Math.exp(13.65 - 4000 / (273 + temperature));

/** Σ rate(T)·Δt at the mean temperature of each interval. Frozen concrete gains nothing: under 0 °C counts 0. */
export function equivalentAge(intervals: readonly CureInterval[], rate: AgeRate): Hours {
  return hours(
    intervals.reduce((sum, interval) => {
      const mean = meanOf(interval);
      return mean < 0 ? sum : sum + rate(mean) * interval.hours;
    }, 0),
  );
}
