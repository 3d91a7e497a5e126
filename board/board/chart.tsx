import { type CSSProperties, type KeyboardEvent, useMemo } from 'react';
import type { Day } from '../time/zone-days.js';
import { ChartBackground } from './chart-background.js';
import { ChartDays } from './chart-days.js';
import { dayWeather } from '../weather/layout/day-weather.js';
import { stripHeight } from '../weather/layout/strip-measures.js';
import { weatherCells } from '../weather/layout/weather-cells.js';
import { type Axis, makeAxis } from './layout/axis.js';
import { layOutRow, type PlacedRow } from './layout/lay-out-row.js';
import { moveFocus, type Stop } from './layout/move-focus.js';
import { type BoardData, type BoardRow, type RowsBy, weatherKindsOf } from './layout/rows.js';
import { barStop, dayStop, readStop } from './layout/stops.js';
import { RowGroup } from './row-group.js';
import type { WeatherAnswer, WeatherOf } from './weather-of.js';
import { stepOfKey } from '../moving/steps.js';
import { useDrag } from '../moving/use-drag.js';
import type { Moving } from '../moving/use-moving.js';
import { useWidth } from './use-width.js';
import './chart.css';

/** Width of the board under which it is drawn for a phone. */
const NARROW = 640;
/** Width of the heads of the rows, in pixels. */
const headWidth = (width: number): number => (width < NARROW ? 112 : 190);
/** Least width of a day by the number of days shown: below it nothing could be read and the board scrolls sideways. */
const leastDay = (days: number): number => (days <= 14 ? 56 : days <= 28 ? 40 : 28);

interface ChartProps {
  readonly rows: readonly BoardRow[];
  readonly board: BoardData;
  /** The weather of the jobs as far as it has been answered, and what to do with more of it. */
  readonly weatherOf: WeatherOf;
  readonly onWeather: (answer: WeatherAnswer) => void;
  readonly byKind: boolean;
  readonly days: readonly Day[];
  readonly by: RowsBy;
  readonly zone: string;
  readonly focused: string | null;
  readonly onFocus: (stop: string) => void;
  readonly onHover: (stop: string | null) => void;
  readonly moving: Moving;
}

/**
 * The drawing: days across, rows down, a bar for each phase, the weather over each job. One bar takes the tab key, arrows
 * lead to the others and to the days of the weather.
 */
export function Chart(props: ChartProps) {
  const { rows, board, weatherOf, onWeather, byKind, days, by, zone, focused, onFocus, onHover, moving } =
    props;
  const { ref, width } = useWidth();
  const now = Date.parse(board.now);
  const head = headWidth(width);
  const axis = useMemo(
    () => makeAxis(days, Math.max(leastDay(days.length), Math.floor((width - head) / days.length))),
    [days, width, head],
  );
  const placed = useMemo(
    () =>
      rows.map((row) =>
        layOutRow(row, axis, now, by, row.job ? stripHeight(weatherKindsOf(row).length, byKind) : 0),
      ),
    [rows, axis, now, by, byKind],
  );
  const stops = useMemo(() => stopsOf(placed, weatherOf, axis, now), [placed, weatherOf, axis, now]);
  const range = useMemo(() => ({ from: board.from, to: board.to }), [board.from, board.to]);
  const tabStop = stops.some(({ id }) => id === focused) ? focused : firstStop(stops, axis.x(now));

  useDrag(ref, axis, moving);

  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const current = (event.target as HTMLElement).dataset['stop'];
    if (!current) return;
    if (moveByKey(event, current, moving)) return event.preventDefault();
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      document.getElementById('detail')?.focus();
      return;
    }
    const next = moveFocus(stops, current, event.key);
    if (!next) return;
    event.preventDefault();
    document.getElementById(next)?.focus();
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
        aria-label={`Phases by ${by}. Arrow keys lead from bar to bar and to the weather over them, Enter to details, M picks a phase up to move it.`}
        style={{ width: head + axis.width }}
        onKeyDown={onKeyDown}
      >
        <ChartBackground axis={axis} now={now} />
        <ChartDays axis={axis} zone={zone} now={now} by={by} />
        {groupsOf(placed).map((group) => (
          <RowGroup
            key={group[0]?.row.id ?? 'none'}
            rows={group}
            board={board}
            range={range}
            byKind={byKind}
            axis={axis}
            now={now}
            zone={zone}
            weatherOf={weatherOf}
            onWeather={onWeather}
            tabStop={tabStop}
            focused={focused}
            onFocus={onFocus}
            onHover={onHover}
            preview={moving.preview}
            canMove={moving.canMove}
          />
        ))}
      </div>
    </div>
  );
}

/** Keys while a phase is picked up, and the key that picks up the one in focus. @returns whether the key was meant so. */
function moveByKey({ key, shiftKey }: KeyboardEvent, stop: string, moving: Moving): boolean {
  const of = readStop(stop);
  if (of?.kind !== 'bar') return false;
  if (moving.tried?.phaseId !== of.phaseId) {
    const picks = (key === 'm' || key === 'M') && moving.canMove(of.phaseId);
    if (picks) moving.pickUp(of.phaseId);
    return picks;
  }
  const step = stepOfKey(key, shiftKey);
  if (step) moving.step(step.step, step.direction);
  else if (key === 'Enter' || key === ' ') moving.drop();
  else if (key === 'Escape') moving.giveUp();
  else return false;
  return true;
}

/** Rows whose weather is asked for together. */
const GROUP = 12;

const groupsOf = (placed: readonly PlacedRow[]): PlacedRow[][] =>
  Array.from({ length: Math.ceil(placed.length / GROUP) }, (_, i) =>
    placed.slice(i * GROUP, (i + 1) * GROUP),
  );

/** Stops of the rows: over each row of bars, where it is a job, a row of the days of its weather. */
function stopsOf(placed: readonly PlacedRow[], weatherOf: WeatherOf, axis: Axis, now: number): Stop[] {
  return placed.flatMap(({ row, bars }, index) => {
    const forecast = weatherOf.get(row.id)?.forecast;
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
