import { epochMs, HOUR_MS, type EpochMs } from '../../units/time.js';
import type { Field } from '../columns.js';
import type { ForecastFault, ForecastRead } from '../forecast-fault.js';
import type { Forecast } from '../forecast.js';
import { HourRows, wrongAnswer } from './hour-rows.js';
import { readInterval } from './iso-interval.js';
import { isRecord, listAt, recordAt, textAt } from './json-record.js';
import { unitColumn } from './unit-column.js';

/** The series that are read, by the name the service gives them. */
const SERIES: Readonly<Record<string, Field>> = {
  temperature: 'temperature',
  dewpoint: 'dewPoint',
  windSpeed: 'wind',
  windGust: 'gust',
  probabilityOfPrecipitation: 'rainChance',
  quantitativePrecipitation: 'rainAmount',
};

/** No interval is longer; a longer one is a slip of its duration. */
const LONGEST = 15 * 24;

/**
 * Reads the gridpoint series of the United States national weather service: for each quantity a unit code and values
 * that hold over ISO 8601 intervals. A value holds in every hour of its interval; an amount of rain falls evenly in
 * it. A null or a missing interval is unknown. A series in an unknown unit is a fault, never guessed.
 */
export function readGridpoint(answer: unknown): ForecastRead<Forecast> {
  const properties = recordAt(answer, 'properties');
  if (Object.keys(properties).length === 0)
    return wrongAnswer('has no properties; it is no gridpoint answer');
  const rows = new HourRows();
  const faults = Object.entries(SERIES).flatMap(([name, field]) =>
    readSeries(rows, name, field, properties[name]),
  );
  if (faults.length > 0) return { ok: false, faults };
  return rows.forecast(textAt(properties, 'updateTime'));
}

function readSeries(rows: HourRows, name: string, field: Field, series: unknown): ForecastFault[] {
  const values = listAt(series, 'values');
  if (values.length === 0) return [];
  const code = textAt(series, 'uom') ?? textAt(series, 'unitCode') ?? '';
  const column = unitColumn(field, code);
  const fault = (message: string): ForecastFault[] => [{ line: 0, message: `${name}: ${message}` }];
  if (column === null) return fault(`unit "${code}" is not known; the series is not used`);
  for (const [i, one] of values.entries()) {
    const interval = readInterval(textAt(one, 'validTime') ?? '');
    const value = isRecord(one) ? (one['value'] ?? null) : null;
    if (!interval || interval.to - interval.from > LONGEST * HOUR_MS)
      return fault(`value ${i + 1} has no interval of a start and a duration`);
    if (value !== null && typeof value !== 'number') return fault(`value ${i + 1} is no number`);
    const hours = hoursOf(interval);
    const share = field === 'rainAmount' && value !== null ? value / hours.length : value;
    for (const at of hours) rows.set(at, column, share);
  }
  return [];
}

/** Starts of the full hours that an interval touches. */
function hoursOf({ from, to }: { from: number; to: number }): EpochMs[] {
  const hours: EpochMs[] = [];
  for (let at = Math.floor(from / HOUR_MS) * HOUR_MS; at < to; at += HOUR_MS) hours.push(epochMs(at));
  return hours;
}
