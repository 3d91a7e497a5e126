import { dateWords, dayWords, monthWords } from '../time/moment-words.js';
import type { Day } from '../time/zone-days.js';
import type { Axis } from './layout/axis.js';
import { type DayHead, dayHeads } from './layout/day-heads.js';
import type { RowsBy } from './layout/rows.js';
import type { Stretch } from './layout/window.js';

interface ChartDaysProps {
  readonly axis: Axis;
  readonly zone: string;
  readonly now: number;
  readonly by: RowsBy;
  readonly days: Stretch;
}

const LETTERS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

/** The heads of the columns: a day, a week or a month each, with the month where it begins. */
export function ChartDays({ axis, zone, now, by, days }: ChartDaysProps) {
  const heads = dayHeads(axis, days);
  return (
    <div role="row" aria-rowindex={1} className="chart-days">
      <div role="columnheader" className="row-head days-corner">
        {by === 'job' ? 'Job' : 'Crew'}
      </div>
      {heads.map((head, index) => {
        const { day, left, width, of } = head;
        const today = of === 'day' && now >= day.start && now < day.end;
        return (
          <div
            key={day.date}
            role="columnheader"
            className={today ? 'day-head day-today' : 'day-head'}
            style={{ left, width }}
            data-month={
              of !== 'month' &&
              (index === 0 || day.date.endsWith('-01') || (of === 'week' ? newMonth(day) : day.weekday === 1))
                ? monthWords(day.start, zone)
                : undefined
            }
          >
            <span className="day-name" aria-hidden="true">
              {headName(head, zone)}
            </span>
            <span className="heard">{headWords(head, zone) + (today ? ', today' : '')}</span>
          </div>
        );
      })}
    </div>
  );
}

/** Whether the month has begun within the week before a Monday, or on it. */
const newMonth = ({ date }: Day): boolean => Number(date.slice(8)) <= 7;

function headWords({ day, days, of }: DayHead, zone: string): string {
  if (of === 'day') return dateWords(day.start, zone);
  return of === 'week'
    ? `week of ${dateWords(day.start, zone)}`
    : `${monthWords(day.start, zone)}, ${days} days`;
}

function headName({ day, of, width }: DayHead, zone: string): string {
  const number = String(Number(day.date.slice(8)));
  if (of === 'month') return width >= 50 ? monthWords(day.start, zone) : '';
  if (of === 'week') return width >= 64 ? dayWords(day.start, zone) : width >= 22 ? number : '';
  const name = LETTERS[day.weekday - 1] ?? '';
  return width >= 48 ? `${name} ${number}` : width >= 34 ? `${name[0]} ${number}` : number;
}
