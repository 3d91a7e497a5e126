import type { Day } from '../../time/zone-days.js';
import type { Axis } from './axis.js';
import { type Stretch, within } from './window.js';

/** The head of a column: of a day, and where days are drawn narrow of a week or of a month. */
export interface DayHead {
  readonly day: Day;
  /** How many days it stands over. */
  readonly days: number;
  readonly left: number;
  readonly width: number;
  readonly of: 'day' | 'week' | 'month';
}

/** Least width of a day that has a head of its own, and of one whose weeks have. */
const DAY = 20;
const WEEK = 6;

/** The heads that reach into what is drawn. The first and the last may stand over less than a whole week or month. */
export function dayHeads({ days, dayWidth }: Axis, drawn: Stretch): DayHead[] {
  const of = dayWidth >= DAY ? 'day' : dayWidth >= WEEK ? 'week' : 'month';
  const begins = ({ weekday, date }: Day): boolean =>
    of === 'day' || (of === 'week' ? weekday === 1 : date.endsWith('-01'));
  const firsts = days.flatMap((day, index) => (index === 0 || begins(day) ? [index] : []));
  return firsts.flatMap((first, place): DayHead[] => {
    const day = days[first];
    const count = (firsts[place + 1] ?? days.length) - first;
    const [left, width] = [first * dayWidth, count * dayWidth];
    return day && within(drawn, left, left + width) ? [{ day, days: count, left, width, of }] : [];
  });
}
