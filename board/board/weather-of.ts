import type { BoardWeatherQuery } from '../api/documents.js';
import type { SiteWeather } from '../weather/site-weather.js';

/** The weather of the site of each job, by the id of the job. */
export type WeatherOf = ReadonlyMap<string, SiteWeather>;

/** What the service answered for some rows. */
export type WeatherAnswer = BoardWeatherQuery['board'];

/** What is known with an answer added; what was known of other days than it is about is forgotten. */
export function withAnswer(known: { readonly from: string; readonly of: WeatherOf }, answer: WeatherAnswer) {
  const before = known.from === answer.from ? known.of : [];
  return {
    from: answer.from,
    of: new Map([...before, ...answer.jobs.map(({ id, site }) => [id, site] as const)]),
  };
}
