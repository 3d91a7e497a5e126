import { fromMemory, type Source } from '../../entry/source.js';
import type { MilesPerHour } from '../../units/weather-units.js';

/** Where the film comes from. */
export const FILM_SOURCE: Source = fromMemory(
  'Jürges as given by McAdams: 5.7 + 3.8·v up to 5 m/s, 6.47·v^0.78 above, W/m²K',
);

/** Wind that is reckoned with where nobody knows it: unknown is not calm. Common practice, no source. */
const UNKNOWN_WIND_MPH = 15;

const METRES_PER_SECOND = 0.44704;

/** Resistance of the air film on a face, m²·K/W, at a wind; unknown wind counts as 15 mph. */
export function filmResistance(wind: MilesPerHour | null): number {
  const speed = Math.max(0, wind ?? UNKNOWN_WIND_MPH) * METRES_PER_SECOND;
  return 1 / (speed <= 5 ? 5.7 + 3.8 * speed : Math.max(24.7, 6.47 * speed ** 0.78));
}

/** Resistance of the film inside an enclosure, where no wind blows, m²·K/W. */
export const STILL_FILM = 1 / 5.7;
