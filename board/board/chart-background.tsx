import type { Axis } from './layout/axis.js';

/** Behind all rows: lines between days, closed weekends in a darker paper, and the line of today. */
export function ChartBackground({ axis, now }: { readonly axis: Axis; readonly now: number }) {
  const { dayWidth, days } = axis;
  const today = now >= axis.start && now < axis.end ? axis.x(now) : null;
  return (
    <svg className="chart-background" width={axis.width} height="100%" aria-hidden="true">
      {days.map(({ date, weekday }, index) => (
        <g key={date}>
          {weekday > 5 && (
            <rect className="weekend" x={index * dayWidth} y="0" width={dayWidth} height="100%" />
          )}
          <line
            className={weekday === 1 ? 'week-line' : 'day-line'}
            x1={index * dayWidth + 0.5}
            x2={index * dayWidth + 0.5}
            y1="0"
            y2="100%"
          />
        </g>
      ))}
      {today !== null && <line className="today-line" x1={today} x2={today} y1="0" y2="100%" />}
    </svg>
  );
}
