import type { Prisma } from '../generated/prisma/client.js';
import type { Forecast as CoreForecast, ForecastHour } from '../../shared/weather/forecast.js';
import { epochMs } from '../../shared/units/time.js';

/** Stored hours are in the core's own form. */
const hoursOf = (stored: Prisma.JsonValue): readonly ForecastHour[] =>
  stored as unknown as readonly ForecastHour[];

interface StoredForecast {
  readonly issuedAt: Date;
  readonly hours: Prisma.JsonValue;
  readonly earlierHours: Prisma.JsonValue;
}

/** The hours of the forecast itself. */
export const ownHours = ({ hours }: Pick<StoredForecast, 'hours'>): readonly ForecastHour[] => hoursOf(hours);

/** A stored forecast as the core reads it: its hours, and before them what earlier forecasts said. */
export function coreForecast({ issuedAt, hours, earlierHours }: StoredForecast): CoreForecast {
  return { issuedAt: epochMs(issuedAt.getTime()), hours: [...hoursOf(earlierHours), ...hoursOf(hours)] };
}
