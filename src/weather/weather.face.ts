/* What other features may use of forecasts, limits and holds. */
export { ForecastFetcher } from './fetch/forecast-fetcher.js';
export { limitSetsInForce } from './limit-sets.js';
export { newestForecastIds } from './newest-forecasts.js';
export { protectionOf } from './protection.js';
export { answeredFor } from './standing-hold.js';
export { storedCauses } from './stored-causes.js';
export { coreForecast } from './stored-forecast.js';
export { WeatherHold } from './weather-hold.model.js';
