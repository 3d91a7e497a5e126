import { assembleForecast, type ForecastRow } from '../assemble-forecast.js';
import type { ForecastRead } from '../forecast-fault.js';
import type { Forecast } from '../forecast.js';
import type { EpochMs } from '../../units/time.js';

/**
 * Hours under way from a source to a forecast: values by the columns of a forecast file, so that units, ranges and
 * gaps are judged in one place, whatever the source.
 */
export class HourRows {
  private readonly hours = new Map<EpochMs, Record<string, unknown>>();
  private readonly names = new Set<string>(['at']);

  /** Sets a value; the later one of the same hour and column stands. */
  set(at: EpochMs, column: string, value: number | null): void {
    this.names.add(column);
    const row = this.hours.get(at) ?? { at: new Date(at).toISOString() };
    row[column] = value;
    this.hours.set(at, row);
  }

  /** The forecast, or everything that is wrong with it; faults count the hours from 1. */
  forecast(issued: unknown): ForecastRead<Forecast> {
    const rows = [...this.hours]
      .sort(([a], [b]) => a - b)
      .map(([, values], i): ForecastRow => ({ line: i + 1, values }));
    return assembleForecast(issued, [...this.names], rows, 0);
  }
}

/** A fault of a whole answer. */
export const wrongAnswer = (message: string): ForecastRead<Forecast> => ({
  ok: false,
  faults: [{ line: 0, message }],
});
