/* What other features may use of forecasts, limits and holds. */
export { Forecast, ForecastHour } from './forecast.model.js';
export { limitSetsInForce } from './limit-sets.js';
export { newestForecastIds } from './newest-forecasts.js';
export { protectionOf } from './protection.js';
export { answeredFor, standingHold } from './standing-hold.js';
export { coreForecast } from './stored-forecast.js';
export { WeatherHold } from './weather-hold.model.js';
export { WeatherLimitSet } from './weather-limits.model.js';
export { WeatherReader } from './weather-reader.js';
