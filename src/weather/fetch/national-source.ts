import { readGridpoint } from '../../../shared/weather/sources/read-gridpoint.js';
import { readHourlyPeriods } from '../../../shared/weather/sources/read-hourly-periods.js';
import { listAt, recordAt } from '../../../shared/weather/sources/json-record.js';
import { readPoint } from '../../../shared/weather/sources/read-point.js';
import { FetchFailure } from '../../platform/http/fetch-failure.js';
import type { HttpGet } from '../../platform/http/http-get.js';
import { shortDegrees } from './degrees.js';
import type { ForecastSource, Known, Place, SourceAnswer } from './forecast-source.js';
import { readJson, usable, withProblem } from './read-answer.js';

const ACCEPT = 'application/geo+json';

/** The grid of the service is 2.5 km wide; four decimals, some 11 m, are the most it takes. */
const DECIMALS = 4;

/**
 * The public forecasts of the United States national weather service: a look-up of the place names the address of its
 * gridpoint, which is kept; the gridpoint holds the series. Where the look-up names no series, the hourly periods are
 * taken. Shapes and the four decimals: the service's own API documentation, "points" and "gridpoints".
 */
export function nationalSource(http: HttpGet, base: string): ForecastSource {
  const host = new URL(base).host;

  async function lookUp(place: Place): Promise<string> {
    const degrees = [place.latitude, place.longitude].map((one) => shortDegrees(one, DECIMALS)).join(',');
    const answer = await http.get(new URL(`${base.replace(/\/$/, '')}/points/${degrees}`), ACCEPT);
    const point = answer.kind === 'changed' ? readPoint(readJson(answer.text, host)) : null;
    const address = point?.gridData ?? point?.hourly ?? null;
    if (address === null)
      throw new FetchFailure(`${host} names no forecast for ${degrees}; check where the site lies.`);
    if (!URL.canParse(address) || new URL(address).origin !== new URL(base).origin)
      throw new FetchFailure(`${host} names a forecast on another server; it is not fetched.`);
    return address;
  }

  async function read(address: string, known: Known): Promise<SourceAnswer> {
    const answer = await http.get(new URL(address), ACCEPT, known);
    if (answer.kind === 'unchanged') return { kind: 'unchanged', known: { ...known, address } };
    const json = readJson(answer.text, host);
    const isPeriods = listAt(recordAt(json, 'properties'), 'periods').length > 0;
    const { forecast, notes } = usable(isPeriods ? readHourlyPeriods(json) : readGridpoint(json), host);
    return { kind: 'forecast', forecast, notes, known: { ...answer.validators, address } };
  }

  /** The grid is laid anew now and then; an address that is gone is looked up once more. */
  async function fetch(place: Place, known: Known): Promise<SourceAnswer> {
    if (known.address !== null) {
      try {
        return await read(known.address, known);
      } catch (error) {
        if (!(error instanceof FetchFailure) || (error.status !== 404 && error.status !== 410)) throw error;
      }
    }
    return read(await lookUp(place), { address: null, etag: null, lastModified: null });
  }

  return {
    kind: 'nationalService',
    title: 'national weather service',
    saysWhenIssued: true,
    fetch: (place, known) =>
      fetch(place, known).catch((error: unknown) => {
        throw error instanceof FetchFailure ? ofPlace(withProblem(error)) : error;
      }),
  };
}

/** The service knows the United States only; elsewhere it finds nothing. */
function ofPlace(failure: FetchFailure): FetchFailure {
  if (failure.status !== 404) return failure;
  const advice = 'It covers the United States only: check where the site lies, or choose another source.';
  return new FetchFailure(`${failure.message} ${advice}`, { status: 404, cause: failure });
}
