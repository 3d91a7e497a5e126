/* What other features may use of forecasts, limits and holds. */
export { Forecast, ForecastHour } from './forecast.model.js';
export { WeatherHold } from './weather-hold.model.js';
export { WeatherLimitSet } from './weather-limits.model.js';
