import { durationWords, isoWords } from '../../time/moment-words.js';
import type { SiteForecast } from '../site-weather.js';

/** "Forecast of Wed 15 Jan 10:00, 5 h old, from the town's station"; without one that nobody knows the weather. */
export function forecastWords(forecast: SiteForecast, now: number, zone: string): string {
  if (!forecast) return 'No forecast: the weather is unknown';
  return `Forecast of ${isoWords(forecast.issuedAt, zone)}, ${ageWords(forecast.issuedAt, now)}, from: ${forecast.source}`;
}

/** "5 h old"; "new" within its first quarter of an hour. */
export function ageWords(issuedAt: string, now: number): string {
  const minutes = Math.max(0, Math.floor((now - Date.parse(issuedAt)) / 60_000));
  return minutes < 15 ? 'new' : `${durationWords(minutes)} old`;
}
