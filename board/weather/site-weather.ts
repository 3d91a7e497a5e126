import type { BoardWeatherQuery, WindowFieldsFragment } from '../api/documents.js';

/** The weather of a site as the board asks for it. */
export type SiteWeather = BoardWeatherQuery['board']['jobs'][number]['site'];

export type SiteForecast = SiteWeather['forecast'];
export type ForecastHour = NonNullable<SiteForecast>['hours'][number];
export type Windows = WindowFieldsFragment;

/** Length of an hour of a forecast, ms. */
export const HOUR_MS = 3_600_000;
