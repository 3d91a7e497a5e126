import { dateWords, monthWords } from '../time/moment-words.js';
import type { Day } from '../time/zone-days.js';
import type { Axis } from './layout/axis.js';
import type { RowsBy } from './layout/rows.js';

interface ChartDaysProps {
  readonly axis: Axis;
  readonly zone: string;
  readonly now: number;
  readonly by: RowsBy;
}

const LETTERS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];

/** The heads of the columns: a day each, with the month where it begins. */
export function ChartDays({ axis, zone, now, by }: ChartDaysProps) {
  return (
    <div role="row" className="chart-days">
      <div role="columnheader" className="row-head days-corner">
        {by === 'job' ? 'Job' : 'Crew'}
      </div>
      {axis.days.map((day, index) => {
        const today = now >= day.start && now < day.end;
        return (
          <div
            key={day.date}
            role="columnheader"
            className={today ? 'day-head day-today' : 'day-head'}
            style={{ width: axis.dayWidth }}
            aria-label={dateWords(day.start, zone) + (today ? ', today' : '')}
          >
            <span className="day-month">
              {index === 0 || day.date.endsWith('-01') ? monthWords(day.start, zone) : ''}
            </span>
            <span className="day-name">{dayName(day, axis.dayWidth)}</span>
          </div>
        );
      })}
    </div>
  );
}

function dayName(day: Day, width: number): string {
  const number = String(Number(day.date.slice(8)));
  const name = LETTERS[day.weekday - 1] ?? '';
  return width >= 48 ? `${name} ${number}` : width >= 34 ? `${name[0]} ${number}` : number;
}
