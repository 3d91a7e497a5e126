import { isRecord, recordAt, textAt } from './json-record.js';

/** Where the forecasts of a place are found: addresses that the point lookup of the gridpoint service answers. */
export interface ForecastPoint {
  /** The series of every quantity. */
  readonly gridData: string | null;
  /** The hourly periods, which know neither gusts nor amounts of rain. */
  readonly hourly: string | null;
}

/** Reads the answer of the point lookup; null when it names neither forecast. */
export function readPoint(answer: unknown): ForecastPoint | null {
  if (!isRecord(answer)) return null;
  const properties = recordAt(answer, 'properties');
  const point = {
    gridData: textAt(properties, 'forecastGridData'),
    hourly: textAt(properties, 'forecastHourly'),
  };
  return point.gridData === null && point.hourly === null ? null : point;
}
