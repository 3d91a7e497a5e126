import type { Interval } from '../model.js';
import type { Slot, SlotCount } from '../slot.js';
import type { ThreePoint } from '../three-point.js';

/** Chances of a day by the day before it, in one month: a chain of two states. */
export interface DayChances {
  /** That a day on which work can go on is followed by one that is lost. */
  readonly lostAfterGood: number;
  /** That a lost day is followed by another. */
  readonly lostAfterLost: number;
}

/** What becomes of the weather where the forecast ends. */
export type BeyondForecast =
  /** Day by day: twelve months, January first, and the month of each day of the horizon (0 to 11). */
  | { readonly kind: 'chain'; readonly months: readonly DayChances[]; readonly monthOfDay: readonly number[] }
  /** Years that have been: for each the stretches in which work could not go on, in slots of this horizon; one is drawn for each sample. */
  | { readonly kind: 'years'; readonly years: readonly (readonly Interval[])[] };

/** Chance in the weather. One region: a lost day is lost at every site, which is the cautious assumption for a company. */
export interface WeatherRisk {
  /** Where the forecast ends; holds before it are taken from the input. */
  readonly forecastUntil: Slot;
  /** Slot at which the first whole day of the horizon begins, and slots of a day. */
  readonly firstDay: Slot;
  readonly day: SlotCount;
  /** Chance, for each day of lead, that the forecast of a day is of no use and the day comes as days do. */
  readonly errorPerDay: number;
  readonly beyond: BeyondForecast;
}

/** What is not certain. Plain data. */
export interface RiskModel {
  /** Durations in slots by phase id; the others are as planned. */
  readonly durations: Readonly<Record<string, ThreePoint>>;
  /** Share of a duration's variance that all phases of the company have in common (season, hands), and all of a job (site). Together at most 1. */
  readonly companyShare: number;
  readonly jobShare: number;
  readonly weather?: WeatherRisk | undefined;
}

/** Which sources of chance are at work. */
export interface Sources {
  readonly durations: boolean;
  readonly weather: boolean;
}

/**
 * Refuses a model that means nothing.
 * @throws RangeError that says what to change
 */
export function checkModel({ companyShare, jobShare, weather }: RiskModel): void {
  if (!(companyShare >= 0 && jobShare >= 0 && companyShare + jobShare <= 1)) {
    throw new RangeError('Shares in common are from 0 up and together at most 1.');
  }
  if (!weather) return;
  const chances = [weather.errorPerDay];
  if (weather.beyond.kind === 'chain') {
    const { months, monthOfDay } = weather.beyond;
    chances.push(...months.flatMap((month) => [month.lostAfterGood, month.lostAfterLost]));
    if (monthOfDay.length === 0 || monthOfDay.some((month) => months[month] === undefined)) {
      throw new RangeError('Every day needs the number of a month that has chances.');
    }
  } else if (weather.beyond.years.length === 0) {
    throw new RangeError('Weather of years that have been needs at least one year.');
  }
  if (!chances.every((chance) => chance >= 0 && chance <= 1))
    throw new RangeError('Chances are from 0 to 1.');
  if (!(weather.day > 0)) throw new RangeError('A day has at least one slot.');
}
