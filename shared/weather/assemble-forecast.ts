import { HOUR_MS, type EpochMs } from '../units/time.js';
import { COLUMNS, type Field } from './columns.js';
import type { ForecastFault, ForecastRead } from './forecast-fault.js';
import type { Forecast, ForecastHour } from './forecast.js';
import { readInstant } from './read-instant.js';

/** One row of a file: its line, and its values by column name. Null or an empty text is unknown. */
export interface ForecastRow {
  readonly line: number;
  readonly values: Readonly<Record<string, unknown>>;
}

/** Makes a forecast of rows, whatever file they came from. Every fault is found, none is guessed away. */
export function assembleForecast(
  issued: unknown,
  names: readonly string[],
  rows: readonly ForecastRow[],
  headLine: number,
): ForecastRead<Forecast> {
  const faults: ForecastFault[] = checkNames(names).map((message) => ({ line: headLine, message }));
  const issuedAt = typeof issued === 'string' ? readInstant(issued) : null;
  if (issuedAt === null) {
    faults.push({
      line: 0,
      message: 'issued_at is missing or no instant; write it as 2026-01-14T06:00-05:00',
    });
  }
  const known = names.filter((name) => Object.hasOwn(COLUMNS, name));
  const hours = rows.flatMap((row) => readHour(row, known, faults));
  if (rows.length === 0) faults.push({ line: 0, message: 'there are no hours; one row an hour is needed' });
  faults.push(...checkOrder(hours));
  if (faults.length > 0 || issuedAt === null) return { ok: false, faults };
  const forecast = { issuedAt, hours: hours.map(({ hour }) => hour) };
  return { ok: true, forecast, notes: [...gapNotes(hours), ...unknownNotes(hours)] };
}

interface LinedHour {
  readonly line: number;
  readonly hour: ForecastHour;
}

function checkNames(names: readonly string[]): string[] {
  const faults: string[] = [];
  const fields = new Map<Field, string>();
  if (!names.includes('at')) faults.push('column "at" is missing; it says when the hour begins');
  for (const name of names) {
    const column = Object.hasOwn(COLUMNS, name) ? COLUMNS[name] : undefined;
    if (name === 'at') continue;
    if (!column) {
      faults.push(`unknown column "${name}"; known are at, ${Object.keys(COLUMNS).join(', ')}`);
      continue;
    }
    const before = fields.get(column.field);
    if (before !== undefined) faults.push(`"${before}" and "${name}" say the same; keep one`);
    fields.set(column.field, name);
  }
  if (!fields.has('temperature')) faults.push('add a column temperature_f or temperature_c');
  return faults;
}

function readHour(
  { line, values }: ForecastRow,
  names: readonly string[],
  faults: ForecastFault[],
): LinedHour[] {
  const at = typeof values['at'] === 'string' ? readInstant(values['at']) : null;
  if (at === null) {
    const message = `"at" is no instant with an offset (${String(values['at'])}); write it as 2026-01-14T06:00-05:00`;
    faults.push({ line, message });
    return [];
  }
  const hour: Record<Field, number | null> & { at: EpochMs } = {
    at,
    temperature: null,
    dewPoint: null,
    wind: null,
    gust: null,
    rainChance: null,
    rainAmount: null,
  };
  for (const name of names) {
    const column = COLUMNS[name];
    if (!column) continue;
    const value = readValue(values[name]);
    if (value === 'bad' || (value !== null && (value < column.min || value > column.max))) {
      const range = `a number from ${column.min} to ${column.max} ${column.unit}, or empty for unknown`;
      faults.push({
        line,
        message: `${name} must be ${range}, got ${String(values[name])}; is the unit right?`,
      });
    } else if (value !== null) {
      hour[column.field] = column.convert(value);
    }
  }
  return [{ line, hour: hour as ForecastHour }];
}

/** Null for unknown, `bad` for what is no number. */
function readValue(value: unknown): number | null | 'bad' {
  if (value === undefined || value === null) return null;
  if (typeof value === 'number') return Number.isFinite(value) ? value : 'bad';
  if (typeof value !== 'string') return 'bad';
  const text = value.trim();
  if (text === '') return null;
  return /^[+-]?\d+(\.\d+)?$/.test(text) ? Number(text) : 'bad';
}

function checkOrder(hours: readonly LinedHour[]): ForecastFault[] {
  return hours.flatMap(({ line, hour }, i) => {
    if (hour.at % (HOUR_MS / 4) !== 0) {
      return [{ line, message: 'the hour begins at no full or quarter hour; hourly rows are needed' }];
    }
    const before = hours[i - 1];
    if (!before) return [];
    const step = hour.at - before.hour.at;
    if (step === 0) return [{ line, message: `the same hour as line ${before.line}; keep one of them` }];
    if (step < 0) return [{ line, message: `earlier than line ${before.line}; put the hours in order` }];
    if (step % HOUR_MS === 0) return [];
    return [{ line, message: `${step / 60_000} minutes after line ${before.line}; hourly rows are needed` }];
  });
}

function gapNotes(hours: readonly LinedHour[]): ForecastFault[] {
  return hours.flatMap(({ line, hour }, i) => {
    const before = hours[i - 1];
    const missing = before ? (hour.at - before.hour.at) / HOUR_MS - 1 : 0;
    return missing > 0
      ? [{ line, message: `${missing} hours before this line are missing; they are unknown` }]
      : [];
  });
}

const unknownNotes = (hours: readonly LinedHour[]): ForecastFault[] =>
  hours.flatMap(({ line, hour }) =>
    hour.temperature === null ? [{ line, message: 'no temperature; the hour is unknown' }] : [],
  );
