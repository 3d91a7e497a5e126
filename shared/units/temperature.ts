import { quantity, type Quantity } from './quantity.js';

/** A temperature on the Fahrenheit scale, °F. */
export type Fahrenheit = Quantity<'°F'>;
/** A temperature on the Celsius scale, °C. */
export type Celsius = Quantity<'°C'>;
/** An absolute temperature, K. */
export type Kelvin = Quantity<'K'>;
/** A difference between two temperatures in Fahrenheit degrees. It has no zero point to move. */
export type FahrenheitDegrees = Quantity<'°F difference'>;
/** A difference between two temperatures in Celsius degrees, the same as in kelvin. */
export type CelsiusDegrees = Quantity<'°C difference'>;

/** °F from a bare number. */
export const fahrenheit = (value: number): Fahrenheit => quantity(value, '°F');
/** °C from a bare number. */
export const celsius = (value: number): Celsius => quantity(value, '°C');
/** A difference in Fahrenheit degrees from a bare number. */
export const fahrenheitDegrees = (value: number): FahrenheitDegrees => quantity(value, '°F difference');
/** A difference in Celsius degrees from a bare number. */
export const celsiusDegrees = (value: number): CelsiusDegrees => quantity(value, '°C difference');

/** 32 °F is 0 °C. */
export const toCelsius = (t: Fahrenheit): Celsius => celsius(((t - 32) * 5) / 9);
/** 0 °C is 32 °F. */
export const toFahrenheit = (t: Celsius): Fahrenheit => fahrenheit((t * 9) / 5 + 32);
/** 0 °C is 273.15 K. */
export const toKelvin = (t: Celsius): Kelvin => quantity(t + 273.15, 'K');
/** A drop of 50 °F is one of 27.8 °C: a difference is scaled, never shifted. */
export const differenceToCelsius = (d: FahrenheitDegrees): CelsiusDegrees => celsiusDegrees((d * 5) / 9);
/** The inverse of {@link differenceToCelsius}. */
export const differenceToFahrenheit = (d: CelsiusDegrees): FahrenheitDegrees =>
  fahrenheitDegrees((d * 9) / 5);
/** `to` less `from`, in Fahrenheit degrees. */
export const degreesBetween = (from: Fahrenheit, to: Fahrenheit): FahrenheitDegrees =>
  fahrenheitDegrees(to - from);
