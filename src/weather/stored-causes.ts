import { z } from 'zod';
import { epochMs } from '../../shared/units/time.js';
import type { WeatherCause } from '../../shared/weather/weather-cause.js';
import type { Prisma } from '../generated/prisma/client.js';

const causes = z.array(
  z.object({
    limitId: z.string(),
    label: z.string(),
    text: z.string(),
    value: z.number(),
    limit: z.number(),
    unit: z.string(),
    hour: z.iso.datetime(),
    source: z.object({ mark: z.enum(['P', 'C', 'M', 'T']), text: z.string() }),
  }),
);

/** Causes as a hold keeps them. */
export const storeCauses = (list: readonly WeatherCause[]): Prisma.InputJsonArray =>
  list.map(({ hour, source, ...cause }) => ({
    ...cause,
    hour: new Date(hour).toISOString(),
    source: { ...source },
  }));

/** Causes out of a hold; none when it was called, or kept before causes had their source. */
export function storedCauses(detail: Prisma.JsonValue): WeatherCause[] {
  const read = causes.safeParse(detail);
  if (!read.success) return [];
  return read.data.map(({ hour, ...cause }) => ({ ...cause, hour: epochMs(Date.parse(hour)) }));
}
