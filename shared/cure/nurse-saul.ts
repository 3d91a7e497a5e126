import { celsius, type Celsius } from '../units/temperature.js';
import { hours, type Hours } from '../units/time.js';
import type { Quantity } from '../units/quantity.js';
import { quantity } from '../units/quantity.js';
import type { CureInterval } from './interval.js';

/** Temperature–time factor. */
export type DegreeHours = Quantity<'°C·h'>;

/** The cautious datum: at 0 °C and under, concrete gains nothing. */
export const CAUTIOUS_DATUM = celsius(0);

/** Temperature–time factor Σ(T − T₀)Δt; what lies under the datum adds nothing, also where an interval crosses it. */
export function temperatureTimeFactor(
  intervals: readonly CureInterval[],
  datum: Celsius = CAUTIOUS_DATUM,
): DegreeHours {
  return quantity(
    intervals.reduce((sum, interval) => sum + aboveDatum(interval, datum), 0),
    '°C·h',
  );
}

/** Hours at `reference` that give the same factor. */
export function nurseSaulAge(
  intervals: readonly CureInterval[],
  datum: Celsius = CAUTIOUS_DATUM,
  reference: Celsius = celsius(20),
): Hours {
  return hours(temperatureTimeFactor(intervals, datum) / (reference - datum));
}

/** The area between a straight line and the datum, counted where the line is above it. */
function aboveDatum({ hours: time, from, to }: CureInterval, datum: Celsius): number {
  const a = from - datum;
  const b = to - datum;
  if (a >= 0 && b >= 0) return ((a + b) / 2) * time;
  if (a <= 0 && b <= 0) return 0;
  const high = Math.max(a, b);
  return ((high * high) / (2 * Math.abs(a - b))) * time;
}
