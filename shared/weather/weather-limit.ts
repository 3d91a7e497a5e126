import type { Source } from '../entry/source.js';

/** What a limit looks at. Temperature is the air's. */
export type LimitMeasure = 'temperature' | 'wind' | 'gust' | 'rainChance' | 'rainAmount';

/**
 * One limit of the work of a phase, as a company edits it. Work stops while the value is `below` or `above`, or at
 * the number itself where `inclusive` says so.
 */
export interface WeatherLimit {
  readonly id: string;
  readonly measure: LimitMeasure;
  readonly stop: 'below' | 'above';
  readonly value: number;
  readonly inclusive: boolean;
  /** Hours after the work in which the value must hold too, as for a bed that must not be rained on. */
  readonly aheadHours: number;
  /** Protection that lifts the limit when it is in place, as an enclosure lifts the cold one for masonry. */
  readonly liftedBy: readonly string[];
  /** Another value that must hold as well for the stop, as wind above 8 mph in the heat. */
  readonly and?: { readonly measure: LimitMeasure; readonly above: number };
  readonly text: string;
  readonly source: Source;
}

/** The limits of one kind of work; a phase names it by its key. */
export interface WeatherLimitSet {
  readonly key: string;
  readonly name: string;
  readonly limits: readonly WeatherLimit[];
}

/** Unit in which each measure is held. */
export const LIMIT_UNITS: Readonly<Record<LimitMeasure, string>> = {
  temperature: '°F',
  wind: 'mph',
  gust: 'mph',
  rainChance: '%',
  rainAmount: 'in',
};
