import type { Finding } from '../../entry/rules/finding.js';
import { published, type Source } from '../../entry/source.js';
import type { Fahrenheit, FahrenheitDegrees } from '../../units/temperature.js';
import { HOUR_MS, type EpochMs } from '../../units/time.js';

/** Where the limits come from. */
export const COOLING_SOURCE: Source = published('UFGS 03 30 00: 5 °F in any hour, 50 °F in any 24 h');

const IN_AN_HOUR = 5;
const IN_A_DAY = 50;

/** A temperature at an instant. */
export interface TemperatureAt {
  readonly at: EpochMs;
  readonly temperature: Fahrenheit;
}

/** The fastest cooling of a history. */
export interface Cooling {
  /** Largest drop within an hour; over a longer step between two readings, its hourly share. */
  readonly hourly: number;
  /** Largest drop within 24 h. */
  readonly daily: number;
}

/** Largest drop in any hour and any 24 h, °F, of temperatures in order of time. */
export function fastestCooling(history: readonly TemperatureAt[]): Cooling {
  let hourly = 0;
  let daily = 0;
  let first = 0;
  history.forEach((now, i) => {
    while (now.at - history[first]!.at > 24 * HOUR_MS) first++;
    for (let j = first; j < i; j++) {
      const then = history[j]!;
      const drop = then.temperature - now.temperature;
      daily = Math.max(daily, drop);
      if (j === i - 1 || now.at - then.at <= HOUR_MS) {
        hourly = Math.max(hourly, drop / Math.max(1, (now.at - then.at) / HOUR_MS));
      }
    }
  });
  return { hourly, daily };
}

/** Concrete may cool by 5 °F in an hour and 50 °F in 24 h at most, or by less where its section asks. */
export function coolingRate(
  history: readonly TemperatureAt[],
  largestDaily?: FahrenheitDegrees | null,
): Finding {
  const { hourly, daily } = fastestCooling(history);
  const day = Math.min(IN_A_DAY, largestDaily ?? IN_A_DAY);
  const ok = hourly <= IN_AN_HOUR + 1e-9 && daily <= day + 1e-9;
  return {
    rule: 'cooling-rate',
    ok,
    measured: `${round(hourly)} °F in an hour, ${round(daily)} °F in 24 h`,
    limit: `at most ${IN_AN_HOUR} °F in an hour and ${day} °F in 24 h`,
    source: COOLING_SOURCE,
    text: ok ? 'Cools slowly enough' : 'Cools too fast and may crack: cover it, turn the heat down in steps',
  };
}

const round = (value: number): number => Math.round(value * 10) / 10;
