import { toSquareMetreKelvinPerWatt } from '../../units/insulation.js';
import { fahrenheit, toCelsius, type Celsius, type Fahrenheit } from '../../units/temperature.js';
import { HOUR_MS, type EpochMs } from '../../units/time.js';
import { protectionAt, type ProtectionPlan } from '../protection/protection-plan.js';
import { STILL_FILM, filmResistance } from '../thermal/surface-film.js';
import type { AirByHour } from './air-by-hour.js';

/** What a placement's free faces meet at an instant. */
export interface Surroundings {
  /** Air next to it: inside an enclosure, or outside. */
  readonly beside: Celsius;
  /** Film and blankets, m²·K/W. */
  readonly resistance: number;
  /** Outside; null where unknown, which an enclosure can hide. */
  readonly outside: Fahrenheit | null;
  readonly known: boolean;
}

/** Air, film and blankets at an instant; null where the air next to it is unknown. */
export function surroundingsAt(
  plan: ProtectionPlan,
  air: AirByHour,
  placedAt: EpochMs,
  instant: number,
): Surroundings | null {
  const { blanketR, inside } = protectionAt(plan, (instant - placedAt) / HOUR_MS);
  const then = air.at(instant);
  const blankets = toSquareMetreKelvinPerWatt(blanketR);
  const outside = then?.temperature ?? null;
  const known = then?.known ?? false;
  if (inside !== null) {
    // A heater adds warmth to the air outside; it never cools it.
    const beside = toCelsius(outside === null ? inside : fahrenheit(Math.max(inside, outside)));
    return { beside, resistance: blankets + STILL_FILM, outside, known };
  }
  if (!then) return null;
  return {
    beside: toCelsius(then.temperature),
    resistance: blankets + filmResistance(then.wind),
    outside,
    known,
  };
}
