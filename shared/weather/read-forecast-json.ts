import { assembleForecast, type ForecastRow } from './assemble-forecast.js';
import type { ForecastRead } from './forecast-fault.js';
import type { Forecast } from './forecast.js';

/**
 * Reads a forecast from JSON with the same names as the CSV:
 * `{"issued_at": "2026-01-14T05:40-05:00", "hours": [{"at": "2026-01-14T06:00-05:00", "temperature_f": 28}]}`.
 * Null or a left-out name is unknown. Line numbers of faults count the hours from 1.
 */
export function readForecastJson(text: string): ForecastRead<Forecast> {
  const whole = (message: string): ForecastRead<Forecast> => ({ ok: false, faults: [{ line: 0, message }] });
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return whole('is no JSON; the file may be cut short');
  }
  if (!isRecord(value)) return whole('must be an object with issued_at and hours');
  const extra = Object.keys(value).find((name) => name !== 'issued_at' && name !== 'hours');
  if (extra !== undefined) return whole(`unknown name "${extra}"; only issued_at and hours are read`);
  if (!Array.isArray(value['hours'])) return whole('hours must be a list with an object for each hour');
  const hours: unknown[] = value['hours'];
  const stray = hours.findIndex((hour) => !isRecord(hour));
  if (stray >= 0)
    return { ok: false, faults: [{ line: stray + 1, message: 'must be an object with at and values' }] };
  const rows = hours.filter(isRecord).map((values, i): ForecastRow => ({ line: i + 1, values }));
  const names = [...new Set(rows.flatMap((row) => Object.keys(row.values)))];
  return assembleForecast(value['issued_at'], names, rows, 0);
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
