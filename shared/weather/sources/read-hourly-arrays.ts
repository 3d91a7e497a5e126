import { epochMs, HOUR_MS, type EpochMs } from '../../units/time.js';
import type { Field } from '../columns.js';
import type { ForecastRead } from '../forecast-fault.js';
import type { Forecast } from '../forecast.js';
import { HourRows, wrongAnswer } from './hour-rows.js';
import { listAt, recordAt, textAt } from './json-record.js';
import { unitColumn } from './unit-column.js';

interface Variable {
  readonly name: string;
  readonly field: Field;
  /** Whether the value tells of the hour that ends at its time, as sums and maxima do. */
  readonly preceding: boolean;
}

/** The variables asked of the open hourly service. */
export const HOURLY_VARIABLES: readonly Variable[] = [
  { name: 'temperature_2m', field: 'temperature', preceding: false },
  { name: 'dew_point_2m', field: 'dewPoint', preceding: false },
  { name: 'wind_speed_10m', field: 'wind', preceding: false },
  { name: 'wind_gusts_10m', field: 'gust', preceding: true },
  { name: 'precipitation_probability', field: 'rainChance', preceding: true },
  { name: 'precipitation', field: 'rainAmount', preceding: true },
];

/**
 * Reads the answer of the open global hourly service: an array of times in Unix seconds, an array of values for each
 * variable, and a block that says their units. Sums and maxima stand at the end of their hour there and are moved to
 * its begin. The service does not say when the forecast was issued: `issued` is when it was fetched.
 */
export function readHourlyArrays(answer: unknown, issued: EpochMs): ForecastRead<Forecast> {
  const hourly = recordAt(answer, 'hourly');
  const units = recordAt(answer, 'hourly_units');
  const times = listAt(hourly, 'time');
  if (textAt(units, 'time') !== 'unixtime' || !times.every(Number.isSafeInteger))
    return wrongAnswer('times are not in Unix seconds; ask with timeformat=unixtime');
  const hours = (times as readonly number[]).map((time) => epochMs(time * 1000));
  const rows = new HourRows();
  for (const { name, field, preceding } of HOURLY_VARIABLES) {
    if (!Object.hasOwn(hourly, name)) continue;
    const values = listAt(hourly, name);
    const code = textAt(units, name) ?? '';
    const column = unitColumn(field, code);
    if (column === null) return wrongAnswer(`${name}: unit "${code}" is not known; the answer is not used`);
    if (values.length !== hours.length)
      return wrongAnswer(
        `${name} has ${values.length} values for ${hours.length} times; it may be cut short`,
      );
    for (const [i, at] of hours.entries()) {
      const value = values[i] ?? null;
      if (value !== null && typeof value !== 'number')
        return wrongAnswer(`${name}: value ${i + 1} is no number`);
      if (!preceding) rows.set(at, column, value);
      else if (i > 0) rows.set(epochMs(at - HOUR_MS), column, value);
    }
  }
  return rows.forecast(new Date(issued).toISOString());
}
