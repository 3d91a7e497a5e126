import { type CSSProperties, type KeyboardEvent, useCallback, useMemo } from 'react';
import type { Day } from '../time/zone-days.js';
import { dayWeather } from '../weather/layout/day-weather.js';
import { stripHeight } from '../weather/layout/strip-measures.js';
import { weatherCells } from '../weather/layout/weather-cells.js';
import { moveByKey } from '../moving/move-by-key.js';
import { useDrag } from '../moving/use-drag.js';
import type { Moving } from '../moving/use-moving.js';
import { AskWeather } from './ask-weather.js';
import { NARROW } from './board-view.js';
import { ChartBackground } from './chart-background.js';
import { ChartDays } from './chart-days.js';
import { ChartRow } from './chart-row.js';
import { type Axis, makeAxis } from './layout/axis.js';
import { layOutRow, type PlacedRow } from './layout/lay-out-row.js';
import { DAYS_HEAD, leastRowOf } from './layout/measures.js';
import { moveFocus, type Stop } from './layout/move-focus.js';
import { type BoardData, type BoardRow, type RowsBy, weatherKindsOf } from './layout/rows.js';
import { type Span, zoomed } from './layout/spans.js';
import { barStop, dayStop } from './layout/stops.js';
import { stackRows, WHOLE, within } from './layout/window.js';
import { useWheelZoom } from './use-wheel-zoom.js';
import { useWidth } from './use-width.js';
import { useWindow } from './use-window.js';
import type { WeatherAnswer, WeatherOf } from './weather-of.js';
import './chart.css';

/** Width of the heads of the rows, in pixels. */
const headWidth = (width: number): number => (width < NARROW ? 112 : 190);
/** Under this width of a day its weather is not drawn: nothing could be read. */
const LEAST_WEATHER = 30;
/** Rows whose weather is asked for together. */
const GROUP = 12;

interface ChartProps {
  readonly rows: readonly BoardRow[];
  readonly board: BoardData;
  /** The weather of the jobs as far as it has been answered, and what to do with more of it. */
  readonly weatherOf: WeatherOf;
  readonly onWeather: (answer: WeatherAnswer) => void;
  readonly byKind: boolean;
  /** The days of the sheet, how many of them are side by side, and the first in view. */
  readonly days: readonly Day[];
  readonly span: Span;
  readonly from: string;
  readonly onView: (changes: { readonly from?: string; readonly span?: Span }) => void;
  readonly by: RowsBy;
  readonly zone: string;
  readonly whole: boolean;
  readonly focused: string | null;
  readonly onFocus: (stop: string) => void;
  /** Goes to what may not be drawn yet. */
  readonly goTo: (stop: string) => void;
  readonly onHover: (stop: string | null) => void;
  readonly moving: Moving;
}

/**
 * The drawing: days across, rows down, a bar for each phase, the weather over each job. Only what is in sight is drawn, and what has the focus. One bar takes
 * the tab key, arrows lead to the others and to the days of the weather.
 */
export function Chart(props: ChartProps) {
  const { rows, board, weatherOf, onWeather, byKind, days, by, zone, focused, onFocus, goTo, onHover } =
    props;
  const { span, from, onView, whole, moving } = props;
  const { ref, width } = useWidth();
  const now = Date.parse(board.now);
  const head = headWidth(width);
  const axis = useMemo(() => makeAxis(days, dayWidthOf(width - head, span)), [days, width, head, span]);
  const weathered = axis.dayWidth >= LEAST_WEATHER;
  const least = leastRowOf(by, width < NARROW, weathered);
  const placed = useMemo(
    () =>
      rows.map((row) => {
        const strip = row.job && weathered ? stripHeight(weatherKindsOf(row).length, byKind) : 0;
        return layOutRow(row, axis, now, by, strip, least);
      }),
    [rows, axis, now, by, byKind, weathered, least],
  );
  const { tops, height } = useMemo(() => stackRows(placed.map((one) => one.height)), [placed]);
  const groups = useMemo(() => groupsOf(placed, tops), [placed, tops]);
  const onScrolled = useCallback((date: string) => onView({ from: date }), [onView]);
  const { window: inSight, hold } = useWindow({
    chart: ref,
    axis,
    head,
    ready: width > 0,
    top: DAYS_HEAD,
    from,
    onScrolled,
    zone,
  });
  const window = whole ? WHOLE : inSight;
  const stops = useMemo(
    () => stopsOf(placed, weathered ? weatherOf : null, axis, now),
    [placed, weathered, weatherOf, axis, now],
  );
  const range = useMemo(() => ({ from: board.from, to: board.to }), [board.from, board.to]);
  const tabStop = useMemo(
    () => (stops.some(({ id }) => id === focused) ? focused : firstStop(stops, axis.x(now))),
    [stops, focused, axis, now],
  );
  const keptRow = stops.find(({ id }) => id === tabStop)?.row ?? -1;
  const zoom = useCallback(
    (direction: 1 | -1, x?: number) => {
      const next = zoomed(span, direction);
      if (next === span) return;
      hold(x);
      onView({ span: next });
    },
    [span, hold, onView],
  );
  useDrag(ref, axis, moving);
  useWheelZoom(ref, head, zoom);

  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const current = (event.target as HTMLElement).dataset['stop'];
    if (!current) return;
    if (moveByKey(event, current, moving)) return event.preventDefault();
    if (event.key === '+' || event.key === '-') return zoom(event.key === '+' ? 1 : -1);
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      document.getElementById('detail')?.focus();
      return;
    }
    const next = moveFocus(stops, current, event.key);
    if (!next) return;
    event.preventDefault();
    goTo(next);
  };

  return (
    <div
      className={width < NARROW ? 'chart chart-narrow' : 'chart'}
      style={{ '--head': `${head}px` } as CSSProperties}
      ref={ref}
      // Without a bar to go to, the drawing itself must be reachable to be scrolled.
      {...(stops.length === 0 && { tabIndex: 0, role: 'region', 'aria-label': 'Days without phases' })}
    >
      <div
        className="chart-sheet"
        role="grid"
        aria-label={`Phases by ${by}. Arrow keys lead from bar to bar and to the weather over them, Enter to details, M picks a phase up to move it, plus and minus draw the days closer or wider.`}
        aria-rowcount={placed.length + 1}
        style={{ width: head + axis.width, height: DAYS_HEAD + height }}
        onKeyDown={onKeyDown}
      >
        <ChartBackground axis={axis} now={now} days={window.days} />
        <ChartDays axis={axis} zone={zone} now={now} by={by} days={window.days} />
        <div role="rowgroup" className="chart-rows">
          {placed.map((one, index) => {
            const top = tops[index] ?? 0;
            const kept = Math.floor(keptRow / 2) === index;
            if (!kept && !within(window.rows, top, top + one.height)) return null;
            return (
              <ChartRow
                key={one.row.id}
                placed={one}
                index={index}
                top={top}
                days={window.days}
                board={board}
                site={weatherOf.get(one.row.id) ?? null}
                byKind={byKind}
                weathered={weathered}
                axis={axis}
                now={now}
                zone={zone}
                tabStop={kept ? tabStop : null}
                focused={kept ? focused : null}
                onFocus={onFocus}
                onHover={onHover}
                preview={moving.preview && reaches(moving.preview, one) ? moving.preview : null}
                canMove={moving.canMove}
              />
            );
          })}
        </div>
      </div>
      {weathered &&
        groups
          .filter((group) => within(window.rows, group.from, group.to))
          .map(({ key, rows: group }) => (
            <AskWeather key={key} rows={group} range={range} now={now} onWeather={onWeather} />
          ))}
    </div>
  );
}

/** Whole pixels where days are wide enough for it, so that lines stay sharp. */
function dayWidthOf(width: number, span: Span): number {
  const exact = Math.max(1, width) / span;
  return exact >= 8 ? Math.floor(exact) : exact;
}

/** Whether a tried move does anything in a row, so that the others need not be drawn anew. */
const reaches = ({ places, tried }: NonNullable<Moving['preview']>, { row }: PlacedRow): boolean =>
  row.phases.some(({ id }) => id === tried.phaseId || places.has(id));

/** Rows whose weather is asked for together, and where they lie; rows of crews have none. */
function groupsOf(placed: readonly PlacedRow[], tops: readonly number[]) {
  return Array.from({ length: Math.ceil(placed.length / GROUP) }, (_, i) => i * GROUP).flatMap((first) => {
    const rows = placed.slice(first, first + GROUP).map(({ row }) => row);
    const last = Math.min(first + GROUP, placed.length) - 1;
    const end = (tops[last] ?? 0) + (placed[last]?.height ?? 0);
    return rows.some(({ job }) => job)
      ? [{ key: rows[0]?.id ?? '', rows, from: tops[first] ?? 0, to: end }]
      : [];
  });
}

/** Stops of the rows: over each row of bars, where it is a job, a row of the days of its weather. */
function stopsOf(placed: readonly PlacedRow[], weatherOf: WeatherOf | null, axis: Axis, now: number): Stop[] {
  return placed.flatMap(({ row, bars }, index) => {
    const forecast = weatherOf?.get(row.id)?.forecast;
    const days =
      forecast === undefined ? [] : weatherCells(dayWeather(forecast, axis.days), forecast, axis, now);
    return [
      ...days.map(({ date, left, width }) => ({
        id: dayStop(row.id, date),
        row: index * 2,
        left,
        middle: left + Math.min(width, axis.dayWidth) / 2,
      })),
      ...bars.map(({ phase, left, reach }) => ({
        id: barStop(phase.id),
        row: index * 2 + 1,
        left,
        middle: left + reach / 2,
      })),
    ];
  });
}

/** The stop that the tab key meets first: the bar nearest to now in the first row that has bars; else any stop. */
function firstStop(stops: readonly Stop[], now: number): string | null {
  const first = stops.find(({ row }) => row % 2 === 1) ?? stops[0];
  const [nearest] = stops
    .filter((stop) => stop.row === first?.row)
    .sort((a, b) => Math.abs(a.middle - now) - Math.abs(b.middle - now));
  return nearest?.id ?? null;
}
