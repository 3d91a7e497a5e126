import { published, type Source } from '../entry/source.js';
import { quantity, type Quantity } from '../units/quantity.js';
import type { Celsius, Fahrenheit } from '../units/temperature.js';
import type { MilesPerHour, Percent } from '../units/weather-units.js';

/** Wind speed in kilometres per hour. */
export type KilometresPerHour = Quantity<'km/h'>;
/** Evaporation in kilograms per square metre and hour. */
export type KilogramsPerSquareMetreHour = Quantity<'kg/m²·h'>;
/** Evaporation in pounds per square foot and hour. */
export type PoundsPerSquareFootHour = Quantity<'lb/ft²·h'>;

/** km/h from a bare number. */
export const kilometresPerHour = (value: number): KilometresPerHour => quantity(value, 'km/h');

/** Where the formula comes from. */
export const EVAPORATION_SOURCE: Source = published('Uno 1998');

/** What the air and the surface are like, in SI units. */
export interface SurfaceAir {
  readonly concrete: Celsius;
  readonly air: Celsius;
  readonly humidity: Percent;
  readonly wind: KilometresPerHour;
}

/** The same in the American units. */
export interface SurfaceAirUs {
  readonly concrete: Fahrenheit;
  readonly air: Fahrenheit;
  readonly humidity: Percent;
  readonly wind: MilesPerHour;
}

/** Water that leaves a fresh surface: 5·([Tc + 18]^2.5 − r·[Ta + 18]^2.5)·(V + 4)·10⁻⁶. None below nothing. */
export function evaporation({ concrete, air, humidity, wind }: SurfaceAir): KilogramsPerSquareMetreHour {
  const drive = power(concrete + 18) - (humidity / 100) * power(air + 18);
  return quantity(Math.max(0, 5 * drive * (wind + 4) * 1e-6), 'kg/m²·h');
}

/** The same from °F and mph: (Tc^2.5 − r·Ta^2.5)·(1 + 0.4·V)·10⁻⁶. */
export function evaporationUs({ concrete, air, humidity, wind }: SurfaceAirUs): PoundsPerSquareFootHour {
  const drive = power(concrete) - (humidity / 100) * power(air);
  return quantity(Math.max(0, drive * (1 + 0.4 * wind) * 1e-6), 'lb/ft²·h');
}

const power = (base: number): number => Math.max(0, base) ** 2.5;
