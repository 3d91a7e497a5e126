import { celsius, toFahrenheit } from '../../../shared/units/temperature.js';
import { readInstant } from '../../../shared/weather/read-instant.js';

/** Most readings in one post. */
export const MOST_READINGS = 500;

/** A reading as a logger sent it, in the units of the house. */
export interface PostedReading {
  readonly index: number;
  readonly at: Date;
  readonly concreteF: number;
  readonly airF: number | null;
  readonly placementId: string | null;
}

/** A reading that cannot be used, with what to do. */
export interface RefusedReading {
  readonly index: number;
  readonly message: string;
}

/** What was in a post. */
export interface PostedReadings {
  readonly good: readonly PostedReading[];
  readonly refused: readonly RefusedReading[];
}

/**
 * Reads the body of a post: `{"readings": [{"at": "2031-01-06T14:00:00Z", "concreteF": 55.4, "airF": 28}]}`. Temperatures
 * are given in °F or, as `concreteC` and `airC`, in °C; `at` is the logger's own time with its offset.
 *
 * @returns the readings, or a sentence that says what is wrong with the body as a whole.
 */
export function readPost(body: unknown): PostedReadings | string {
  const readings = isRecord(body) ? body['readings'] : null;
  if (!Array.isArray(readings))
    return 'Send an object with a list "readings", such as {"readings": [{"at": "2031-01-06T14:00:00Z", "concreteF": 55}]}.';
  if (readings.length === 0) return 'The list "readings" is empty; send at least one reading.';
  if (readings.length > MOST_READINGS)
    return `${readings.length} readings are too many for one post; send at most ${MOST_READINGS} at a time.`;
  const read = readings.map(readOne);
  return {
    good: read.filter((one) => 'at' in one),
    refused: read.filter((one) => 'message' in one),
  };
}

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const KNOWN = ['at', 'concreteF', 'concreteC', 'airF', 'airC', 'placementId'];

function readOne(given: unknown, index: number): PostedReading | RefusedReading {
  const refuse = (message: string): RefusedReading => ({ index, message });
  if (!isRecord(given)) return refuse('A reading is an object with "at" and "concreteF" or "concreteC".');
  const unknown = Object.keys(given).find((name) => !KNOWN.includes(name));
  if (unknown !== undefined) return refuse(`"${unknown}" is not known; a reading has ${KNOWN.join(', ')}.`);
  const at = typeof given['at'] === 'string' ? readInstant(given['at']) : null;
  if (at === null)
    return refuse(
      '"at" must be an instant with its offset, such as 2031-01-06T14:00:00Z or 2031-01-06T09:00-05:00.',
    );
  const concrete = degrees(given, 'concrete', [-40, 212]);
  if (typeof concrete === 'string') return refuse(concrete);
  if (concrete === null) return refuse('Give the temperature of the concrete as "concreteF" or "concreteC".');
  const air = degrees(given, 'air', [-70, 140]);
  if (typeof air === 'string') return refuse(air);
  const placementId = given['placementId'] ?? null;
  if (placementId !== null && typeof placementId !== 'string') return refuse('"placementId" must be a text.');
  return { index, at: new Date(at), concreteF: concrete, airF: air, placementId };
}

/** A temperature in °F from either unit; null when neither is given, a sentence when it cannot be. */
function degrees(
  given: Record<string, unknown>,
  name: string,
  [least, most]: readonly [number, number],
): number | null | string {
  const f = given[`${name}F`] ?? null;
  const c = given[`${name}C`] ?? null;
  if (f !== null && c !== null) return `Give "${name}F" or "${name}C", not both.`;
  const value = f ?? c;
  if (value === null) return null;
  if (typeof value !== 'number' || !Number.isFinite(value)) return `"${name}" must be a number.`;
  const inF = f === null ? toFahrenheit(celsius(value)) : value;
  if (inF < least || inF > most)
    return `"${name}" is ${value} ${f === null ? '°C' : '°F'}, which no sensor in use reads (${least} to ${most} °F); check the sensor and its wiring.`;
  return Math.round(inF * 100) / 100;
}
