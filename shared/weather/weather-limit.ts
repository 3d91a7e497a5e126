import type { Source } from '../entry/source.js';

/** What a limit looks at. Temperature is the air's; evaporation is the water that would leave fresh concrete. */
export type LimitMeasure = 'temperature' | 'wind' | 'gust' | 'rainChance' | 'rainAmount' | 'evaporation';

/** When a limit that has closed opens again: a wobble around its value must not switch the work on and off. */
export interface Reopening {
  /** Fair is beyond this value, seen from the limit, or at it where `inclusive` says so. */
  readonly value: number;
  readonly inclusive: boolean;
  /** Fair hours that must have passed; 0 asks it of the hour itself only. */
  readonly hours: number;
  /** The last hours among which they are counted; as many as `hours` asks for them in a row. */
  readonly within: number;
}

/**
 * One limit of the work of a phase, as a company edits it. It is broken while the value is `below` or `above`, or at
 * the number itself where `inclusive` says so. In a list of limits it closes the work; in a list of requirements it
 * says what must be done.
 */
export interface WeatherLimit {
  readonly id: string;
  readonly measure: LimitMeasure;
  readonly stop: 'below' | 'above';
  readonly value: number;
  readonly inclusive: boolean;
  /** Hours after the work in which it must hold too, as for a bed that must not be rained on. */
  readonly aheadHours: number;
  /** Hours before the work in which it must have held too, as for faces that must be dry. */
  readonly backHours: number;
  /** Judges the mean daily value (half of highest and lowest) of the 24 hours that end, or begin, with the hour. */
  readonly dailyMean?: 'before' | 'after';
  /** Counts only when it has been broken for more than so many hours together. */
  readonly lastingHours?: number;
  /** Without one it opens as soon as it is no longer broken. */
  readonly reopen?: Reopening;
  /**
   * Follows the thermometer's turn: closes only while the value moves on beyond the limit, opens only while it moves
   * back and the limit's own value is expected within so many hours.
   */
  readonly turningHours?: number;
  /** Another value that must hold as well, as wind above 8 mph in the heat. */
  readonly and?: { readonly measure: LimitMeasure; readonly above: number };
  /** Protection that lifts the limit when it is in place, as an enclosure lifts the cold one for masonry. */
  readonly liftedBy: readonly string[];
  /** What is wrong beyond the limit; of a requirement, what must be done. */
  readonly text: string;
  readonly source: Source;
}

/** The limits of one kind of work; a phase names it by its key. */
export interface WeatherLimitSet {
  readonly key: string;
  readonly name: string;
  /** Each of them closes the work by itself. */
  readonly limits: readonly WeatherLimit[];
  /** What must be done while the work goes on; none of them closes it. */
  readonly requirements: readonly WeatherLimit[];
}

/** Unit in which each measure is held. */
export const LIMIT_UNITS: Readonly<Record<LimitMeasure, string>> = {
  temperature: '°F',
  wind: 'mph',
  gust: 'mph',
  rainChance: '%',
  rainAmount: 'in',
  evaporation: 'lb/ft²/h',
};
