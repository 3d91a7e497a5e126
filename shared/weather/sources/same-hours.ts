import type { EpochMs } from '../../units/time.js';
import type { Forecast, ForecastHour } from '../forecast.js';

/** Values are told apart from this on; less is the rounding of their units. */
const NOTICED = 1e-6;

const FIELDS = ['temperature', 'dewPoint', 'wind', 'gust', 'rainChance', 'rainAmount'] as const;

/** Whether two forecasts say the same of every hour from `from` on; hours known to one of them only differ. */
export function sameHours(one: Forecast, other: Forecast, from: EpochMs): boolean {
  const [a, b] = [one, other].map(({ hours }) => hours.filter(({ at }) => at >= from));
  return a?.length === b?.length && (a ?? []).every((hour, i) => sameHour(hour, b?.[i]));
}

function sameHour(one: ForecastHour, other: ForecastHour | undefined): boolean {
  return (
    one.at === other?.at &&
    FIELDS.every((field) => {
      const [a, b] = [one[field], other[field]];
      return a === null || b === null ? a === b : Math.abs(a - b) < NOTICED;
    })
  );
}
