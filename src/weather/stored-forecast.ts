import type { Prisma } from '../generated/prisma/client.js';
import type { Forecast as CoreForecast, ForecastHour } from '../../shared/weather/forecast.js';
import { epochMs } from '../../shared/units/time.js';

/** A stored forecast as the core reads it; its hours are stored in the core's own form. */
export function coreForecast(row: { issuedAt: Date; hours: Prisma.JsonValue }): CoreForecast {
  return {
    issuedAt: epochMs(row.issuedAt.getTime()),
    hours: row.hours as unknown as readonly ForecastHour[],
  };
}
