import type { Reply } from './answering-server.js';

/*
 * Answers in the shapes that the two public services publish, cut down to what is read.
 *
 * The national weather service: "points" names the address of the gridpoint; the gridpoint holds a unit code and values
 * over ISO 8601 intervals for each quantity (its API documentation, GridpointQuantitativeValueLayer). The open hourly
 * service: arrays under `hourly`, their units under `hourly_units` (documentation of its forecast API).
 */

const HOUR_MS = 3_600_000;

/** The place that the point lookup below knows, and where it sends. */
export const PLACE = { latitude: 42.5, longitude: -73.25 };
export const POINT_PATH = '/points/42.5,-73.25';
export const GRID_PATH = '/gridpoints/XYZ/31,80';

/** The answer of the point lookup. */
export const pointAnswer = (base: string, properties: Record<string, unknown> = {}): Reply => ({
  headers: { 'content-type': 'application/geo+json' },
  body: JSON.stringify({
    type: 'Feature',
    properties: {
      gridId: 'XYZ',
      gridX: 31,
      gridY: 80,
      forecastHourly: `${base}${GRID_PATH}/forecast/hourly`,
      forecastGridData: `${base}${GRID_PATH}`,
      ...properties,
    },
  }),
});

/** What a gridpoint answer below is made of: °C of each hour from `from` on; null is none. */
export interface GridOptions {
  readonly from: string;
  readonly celsius: readonly (number | null)[];
  readonly issued: string;
  readonly unit?: string;
  /** Hours left out, counted from `from`. */
  readonly without?: readonly number[];
  readonly headers?: Readonly<Record<string, string>>;
}

/** The series of a gridpoint. */
export function gridAnswer({ from, celsius, issued, unit, without = [], headers }: GridOptions): Reply {
  const values = celsius.flatMap((value, i) => {
    if (without.includes(i)) return [];
    const at = new Date(Date.parse(from) + i * HOUR_MS).toISOString().replace('.000Z', '+00:00');
    return [{ validTime: `${at}/PT1H`, value }];
  });
  const properties = {
    updateTime: issued.replace('Z', '+00:00'),
    temperature: { uom: unit ?? 'wmoUnit:degC', values },
  };
  return {
    headers: { 'content-type': 'application/geo+json', ...headers },
    body: JSON.stringify({ type: 'Feature', properties }),
  };
}

/** Arrays of the open hourly service: °C of each hour from `from` on. */
export const hourlyAnswer = (from: string, celsius: readonly (number | null)[]): Reply => ({
  headers: { 'content-type': 'application/json' },
  body: JSON.stringify({
    utc_offset_seconds: 0,
    hourly_units: { time: 'unixtime', temperature_2m: '°C' },
    hourly: {
      time: celsius.map((_, i) => (Date.parse(from) + i * HOUR_MS) / 1000),
      temperature_2m: celsius,
    },
  }),
});

/** A problem as RFC 7807 writes it. */
export const problemAnswer = (status: number, title: string, detail: string): Reply => ({
  status,
  headers: { 'content-type': 'application/problem+json' },
  body: JSON.stringify({ type: 'about:blank', title, status, detail }),
});

/** The same value for so many hours. */
export const steady = (hours: number, celsius: number): number[] =>
  Array.from({ length: hours }, () => celsius);
