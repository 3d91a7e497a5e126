import { outcomeUnion } from '../platform/outcomes/outcome-union.js';
import { WrongState } from '../phases/phases.face.js';
import { ForecastReceived } from './forecast.model.js';
import { WeatherHoldChanged } from './weather-hold.model.js';
import { WeatherLimitsSaved } from './weather-limits.model.js';

/** What `uploadForecast` answers. */
export const UploadForecastOutcome = outcomeUnion('UploadForecastOutcome', ForecastReceived);

/** What `saveWeatherLimits` answers. */
export const SaveWeatherLimitsOutcome = outcomeUnion('SaveWeatherLimitsOutcome', WeatherLimitsSaved);

/** What `callWeatherHold` answers. */
export const CallWeatherHoldOutcome = outcomeUnion('CallWeatherHoldOutcome', WeatherHoldChanged, [
  WrongState,
]);

/** What `liftWeatherHold` answers. */
export const LiftWeatherHoldOutcome = outcomeUnion('LiftWeatherHoldOutcome', WeatherHoldChanged, [
  WrongState,
]);
