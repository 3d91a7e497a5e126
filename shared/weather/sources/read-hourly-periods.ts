import type { Field } from '../columns.js';
import type { ForecastRead } from '../forecast-fault.js';
import type { Forecast } from '../forecast.js';
import { readInstant } from '../read-instant.js';
import { HourRows, wrongAnswer } from './hour-rows.js';
import { isRecord, type JsonRecord, listAt, recordAt, textAt } from './json-record.js';
import { unitColumn } from './unit-column.js';

/**
 * Reads the hourly periods of the United States national weather service. Values come with a unit code, or, in the
 * older form, as a bare temperature with `temperatureUnit` and a wind in words ("10 mph", "5 to 10 mph": the higher
 * counts). Gusts and amounts of rain are not in it: unknown.
 */
export function readHourlyPeriods(answer: unknown): ForecastRead<Forecast> {
  const properties = recordAt(answer, 'properties');
  const rows = new HourRows();
  for (const [i, period] of listAt(properties, 'periods').entries()) {
    const at = readInstant(textAt(period, 'startTime') ?? '');
    if (at === null || !isRecord(period)) return wrongAnswer(`period ${i + 1} has no start with an offset`);
    for (const [field, name] of FIELDS) {
      const measured = valueOf(period, name);
      if (measured === undefined) continue;
      const column = measured && unitColumn(field, measured.code);
      if (measured === null || column === null)
        return wrongAnswer(`period ${i + 1}: ${name} is in no known form or unit; the answer is not used`);
      if (column) rows.set(at, column, measured.value);
    }
  }
  return rows.forecast(textAt(properties, 'updateTime') ?? textAt(properties, 'updated'));
}

const FIELDS: readonly (readonly [Field, string])[] = [
  ['temperature', 'temperature'],
  ['dewPoint', 'dewpoint'],
  ['wind', 'windSpeed'],
  ['rainChance', 'probabilityOfPrecipitation'],
];

interface Measured {
  readonly value: number | null;
  readonly code: string;
}

/** A value with its unit code; undefined when there is none, null when its form is not known. */
function valueOf(period: JsonRecord, name: string): Measured | null | undefined {
  const given = period[name];
  if (given === undefined || given === null) return undefined;
  if (isRecord(given)) {
    const value = given['value'] ?? null;
    const code = textAt(given, 'unitCode');
    if (code === null || (value !== null && typeof value !== 'number')) return null;
    return { value, code };
  }
  if (typeof given === 'number') {
    const code = textAt(period, `${name}Unit`);
    return code === null ? null : { value: given, code };
  }
  const words = typeof given === 'string' ? /^(?:(\d+) to )?(\d+) (mph|km\/h)$/.exec(given) : null;
  return words ? { value: Number(words[2]), code: words[3] ?? '' } : null;
}
