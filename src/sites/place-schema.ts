import { z } from 'zod';

/** Latitude in degrees, north positive. */
export const latitude = z
  .number()
  .min(-90, { error: 'must be -90 to 90' })
  .max(90, { error: 'must be -90 to 90' });

/** Longitude in degrees, east positive. */
export const longitude = z
  .number()
  .min(-180, { error: 'must be -180 to 180' })
  .max(180, { error: 'must be -180 to 180' });
