import { HOURLY_VARIABLES, readHourlyArrays } from '../../../shared/weather/sources/read-hourly-arrays.js';
import { FetchFailure } from '../../platform/http/fetch-failure.js';
import type { HttpGet } from '../../platform/http/http-get.js';
import { shortDegrees } from './degrees.js';
import type { ForecastSource, Place } from './forecast-source.js';
import { readJson, usable, withProblem } from './read-answer.js';

/** Days ahead that are asked for; the service gives up to sixteen. */
const DAYS_AHEAD = 16;
/** Days back: what cures today has been in the air of the last ones. */
const DAYS_BACK = 2;
const DECIMALS = 4;

/**
 * The open global hourly service: one request gives arrays of all variables. Names, limits and the meaning of the
 * times: the service's own documentation of its forecast API. What the base address asks for already, such as a key,
 * stays in it.
 */
export function hourlySource(http: HttpGet, base: string): ForecastSource {
  const { host } = new URL(base);
  const addressOf = (place: Place): URL => {
    const address = new URL(base);
    const asked = {
      latitude: shortDegrees(place.latitude, DECIMALS),
      longitude: shortDegrees(place.longitude, DECIMALS),
      hourly: HOURLY_VARIABLES.map(({ name }) => name).join(','),
      timeformat: 'unixtime',
      timezone: 'GMT',
      forecast_days: String(DAYS_AHEAD),
      past_days: String(DAYS_BACK),
    };
    for (const [name, value] of Object.entries(asked)) address.searchParams.set(name, value);
    return address;
  };
  return {
    kind: 'openHourly',
    title: 'open hourly service',
    saysWhenIssued: false,
    fetch: async (place, known, now) => {
      try {
        const answer = await http.get(addressOf(place), 'application/json', known);
        if (answer.kind === 'unchanged') return { kind: 'unchanged', known };
        const { forecast, notes } = usable(readHourlyArrays(readJson(answer.text, host), now), host);
        return { kind: 'forecast', forecast, notes, known: { ...answer.validators, address: null } };
      } catch (error) {
        throw error instanceof FetchFailure ? withProblem(error) : error;
      }
    },
  };
}
