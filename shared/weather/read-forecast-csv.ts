import { assembleForecast } from './assemble-forecast.js';
import type { ForecastRead } from './forecast-fault.js';
import type { Forecast } from './forecast.js';

/**
 * Reads a forecast from CSV. The first line says when it was issued, the second names the columns, then a row an
 * hour; units are in the names, an empty cell is unknown, there are no quotes:
 *
 * ```
 * issued_at,2026-01-14T05:40-05:00
 * at,temperature_f,wind_mph,rain_chance_pct,rain_in
 * 2026-01-14T06:00-05:00,28,9,10,0
 * ```
 */
export function readForecastCsv(text: string): ForecastRead<Forecast> {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const cells = lines.map((line) => line.split(',').map((cell) => cell.trim()));
  const [first, head] = cells;
  if (first?.[0] !== 'issued_at' || first.length !== 2) {
    const message = 'the first line must be issued_at and an instant, as in issued_at,2026-01-14T05:40-05:00';
    return { ok: false, faults: [{ line: 1, message }] };
  }
  if (text.includes('"')) {
    const line = lines.findIndex((one) => one.includes('"')) + 1;
    return {
      ok: false,
      faults: [{ line, message: 'quotes are not read; write plain cells between commas' }],
    };
  }
  const names = head ?? [];
  const body = cells
    .map((row, i) => ({ row, line: i + 1 }))
    .slice(2)
    .filter(({ row }) => row.join('') !== '');
  const ragged = body.filter(({ row }) => row.length !== names.length);
  if (ragged.length > 0) {
    const faults = ragged.map(({ row, line }) => ({
      line,
      message: `has ${row.length} cells, the head has ${names.length}; the file may be cut short`,
    }));
    return { ok: false, faults };
  }
  const rows = body.map(({ row, line }) => ({
    line,
    values: Object.fromEntries(names.map((name, i) => [name, row[i]])),
  }));
  return assembleForecast(first[1], names, rows, 2);
}
