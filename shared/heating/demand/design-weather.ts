import { COMMON_PRACTICE, fromMemory, type Source } from '../../entry/source.js';
import { inchesPerHour, type InchesPerHour } from '../../units/heat.js';
import { fahrenheit, type Fahrenheit } from '../../units/temperature.js';
import { milesPerHour, type MilesPerHour } from '../../units/weather-units.js';

/** The snowfall that a heated surface is designed for. */
export interface DesignWeather {
  readonly name: string;
  readonly air: Fahrenheit;
  /** Frost point below 32 °F. */
  readonly dewPoint: Fahrenheit;
  readonly wind: MilesPerHour;
  /** Snow as water; ordinary snow is about ten times as deep. */
  readonly snow: InchesPerHour;
  /** Who says so: the authority, a weather record, a handbook. */
  readonly source: Source;
}

/**
 * Snowfalls to begin with until the site's own is known: take its hours of snow from a weather record and state it as the
 * source. The handbook's worked example is there to be checked against.
 */
export const DESIGN_WEATHER = {
  'handbook-example': {
    name: 'Worked example of the handbook',
    air: fahrenheit(17),
    dewPoint: fahrenheit(14),
    wind: milesPerHour(19.6),
    snow: inchesPerHour(0.1),
    source: fromMemory('ASHRAE Handbook, HVAC Applications, snow melting: worked example'),
  },
  'mild-snow': {
    name: 'Wet snow near freezing, light wind',
    air: fahrenheit(30),
    dewPoint: fahrenheit(28),
    wind: milesPerHour(7),
    snow: inchesPerHour(0.08),
    source: COMMON_PRACTICE,
  },
  'cold-snow': {
    name: 'Steady snow in the cold, moderate wind',
    air: fahrenheit(20),
    dewPoint: fahrenheit(16),
    wind: milesPerHour(10),
    snow: inchesPerHour(0.1),
    source: COMMON_PRACTICE,
  },
  'hard-snow': {
    name: 'Dry snow in hard cold, strong wind',
    air: fahrenheit(10),
    dewPoint: fahrenheit(6),
    wind: milesPerHour(15),
    snow: inchesPerHour(0.1),
    source: COMMON_PRACTICE,
  },
} as const satisfies Record<string, DesignWeather>;

/** Name of a snowfall that comes with Flagway. */
export type DesignWeatherKey = keyof typeof DESIGN_WEATHER;

/** Throws where the weather is none in which snow falls, saying what to put right. */
export function demandSnow({ air, dewPoint, wind, snow }: DesignWeather): void {
  if (air > 33)
    throw new RangeError(`snow is melted in air of 33 °F or colder, got ${air} °F; take the hours with snow`);
  if (dewPoint > air)
    throw new RangeError(
      `the dew point (${dewPoint} °F) cannot lie above the air (${air} °F); swap or measure again`,
    );
  if (wind < 0 || snow < 0)
    throw new RangeError(`wind and snow cannot be less than nothing, got ${wind} mph and ${snow} in/h`);
}
