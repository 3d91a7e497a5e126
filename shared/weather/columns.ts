import { inches, type Inches } from '../units/length.js';
import { celsius, fahrenheit, toFahrenheit, type Fahrenheit } from '../units/temperature.js';
import {
  fromKilometresPerHour,
  fromKnots,
  fromMetresPerSecond,
  fromMillimetres,
  milesPerHour,
  percent,
  type MilesPerHour,
  type Percent,
} from '../units/weather-units.js';

/** A column of a forecast file: its unit is in its name, and is converted here and nowhere else. */
export interface Column<V> {
  readonly field: Field;
  readonly min: number;
  readonly max: number;
  readonly unit: string;
  readonly convert: (value: number) => V;
}

/** Fields that a column may fill. */
export type Field = 'temperature' | 'dewPoint' | 'wind' | 'gust' | 'rainChance' | 'rainAmount';

const inFahrenheit = (field: Field): Column<Fahrenheit> => ({
  field,
  min: -80,
  max: 135,
  unit: '°F',
  convert: fahrenheit,
});
const inCelsius = (field: Field): Column<Fahrenheit> => ({
  field,
  min: -62,
  max: 57,
  unit: '°C',
  convert: (value) => toFahrenheit(celsius(value)),
});
const speed = (
  field: Field,
  unit: string,
  max: number,
  convert: (v: number) => MilesPerHour,
): Column<MilesPerHour> => ({
  field,
  min: 0,
  max,
  unit,
  convert,
});
const chance: Column<Percent> = { field: 'rainChance', min: 0, max: 100, unit: '%', convert: percent };
const water = (unit: string, max: number, convert: (v: number) => Inches): Column<Inches> => ({
  field: 'rainAmount',
  min: 0,
  max,
  unit,
  convert,
});

/** Every column that is known, by its name in the file's head. */
export const COLUMNS: Readonly<Record<string, Column<Fahrenheit | MilesPerHour | Percent | Inches>>> = {
  temperature_f: inFahrenheit('temperature'),
  temperature_c: inCelsius('temperature'),
  dew_point_f: inFahrenheit('dewPoint'),
  dew_point_c: inCelsius('dewPoint'),
  wind_mph: speed('wind', 'mph', 200, milesPerHour),
  wind_kmh: speed('wind', 'km/h', 320, fromKilometresPerHour),
  wind_ms: speed('wind', 'm/s', 90, fromMetresPerSecond),
  wind_kn: speed('wind', 'kn', 175, fromKnots),
  gust_mph: speed('gust', 'mph', 250, milesPerHour),
  gust_kmh: speed('gust', 'km/h', 400, fromKilometresPerHour),
  gust_ms: speed('gust', 'm/s', 110, fromMetresPerSecond),
  gust_kn: speed('gust', 'kn', 215, fromKnots),
  rain_chance_pct: chance,
  rain_in: water('in', 10, inches),
  rain_mm: water('mm', 254, fromMillimetres),
};
