import type { Axis } from './layout/axis.js';
import { type Stretch, within } from './layout/window.js';

interface ChartBackgroundProps {
  readonly axis: Axis;
  readonly now: number;
  readonly days: Stretch;
}

/** Behind all rows: lines between days and weeks, closed weekends in a darker paper, and the line of today. */
export function ChartBackground({ axis, now, days: drawn }: ChartBackgroundProps) {
  const { dayWidth } = axis;
  const days = axis.days
    .map(({ weekday, date }, index) => ({ weekday, date, left: index * dayWidth }))
    .filter(({ left }) => within(drawn, left, left + dayWidth));
  const fine = dayWidth >= 8;
  const lines = (wanted: (day: (typeof days)[number]) => boolean): string =>
    days
      .filter(wanted)
      .map(({ left }) => `M${left + 0.5} 0V100000`)
      .join('');
  const today = now >= axis.start && now < axis.end ? axis.x(now) : null;
  return (
    <svg className="chart-background" width={axis.width} height="100%" aria-hidden="true">
      {fine && (
        <path
          className="weekend"
          d={days
            .filter(({ weekday }) => weekday > 5)
            .map(({ left }) => `M${left} 0h${dayWidth}V100000h${-dayWidth}z`)
            .join('')}
        />
      )}
      {fine && <path className="day-line" d={lines(({ weekday }) => weekday !== 1)} />}
      <path
        className="week-line"
        d={lines(({ weekday, date }) => (dayWidth >= 4 ? weekday === 1 : date.endsWith('-01')))}
      />
      {today !== null && <path className="today-line" d={`M${today} 0V100000`} />}
    </svg>
  );
}
