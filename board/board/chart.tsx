import { type CSSProperties, type KeyboardEvent, useMemo } from 'react';
import type { BoardWeatherQuery } from '../api/documents.js';
import type { Day } from '../time/zone-days.js';
import { ChartBackground } from './chart-background.js';
import { ChartDays } from './chart-days.js';
import { ChartRow } from './chart-row.js';
import { makeAxis } from './layout/axis.js';
import { layOutRow, type PlacedRow } from './layout/lay-out-row.js';
import { moveFocus, type Stop } from './layout/move-focus.js';
import type { BoardData, BoardRow, RowsBy } from './layout/rows.js';
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
  readonly weather: BoardWeatherQuery['board'] | null;
  readonly days: readonly Day[];
  readonly by: RowsBy;
  readonly zone: string;
  readonly focused: string | null;
  readonly onFocus: (phaseId: string) => void;
  readonly onHover: (phaseId: string | null) => void;
}

/** The drawing: days across, rows down, a bar for each phase. One bar takes the tab key, arrows lead to the others. */
export function Chart({ rows, board, weather, days, by, zone, focused, onFocus, onHover }: ChartProps) {
  const { ref, width } = useWidth();
  const now = Date.parse(board.now);
  const head = headWidth(width);
  const axis = useMemo(
    () => makeAxis(days, Math.max(leastDay(days.length), Math.floor((width - head) / days.length))),
    [days, width, head],
  );
  const placed = useMemo(() => rows.map((row) => layOutRow(row, axis, now, by)), [rows, axis, now, by]);
  const stops = useMemo(() => stopsOf(placed), [placed]);
  const tabStop = stops.some(({ id }) => id === focused) ? focused : firstStop(stops, axis.x(now));

  const onKeyDown = (event: KeyboardEvent<HTMLElement>) => {
    const current = (event.target as HTMLElement).dataset['phase'];
    if (!current) return;
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      document.getElementById('detail')?.focus();
      return;
    }
    const next = moveFocus(stops, current, event.key);
    if (!next) return;
    event.preventDefault();
    document.getElementById(`bar-${next}`)?.focus();
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
        aria-label={`Phases by ${by}. Arrow keys lead from bar to bar, Enter to its details.`}
        style={{ width: head + axis.width }}
        onKeyDown={onKeyDown}
      >
        <ChartBackground axis={axis} now={now} />
        <ChartDays axis={axis} zone={zone} now={now} by={by} />
        {placed.map((row) => (
          <ChartRow
            key={row.row.id}
            placed={row}
            board={board}
            weather={weather}
            axis={axis}
            zone={zone}
            tabStop={tabStop}
            focused={focused}
            onFocus={onFocus}
            onHover={onHover}
          />
        ))}
      </div>
    </div>
  );
}

function stopsOf(placed: readonly PlacedRow[]): Stop[] {
  return placed.flatMap(({ bars }, row) =>
    bars.map(({ phase, left, reach }) => ({ id: phase.id, row, left, middle: left + reach / 2 })),
  );
}

/** The bar that the tab key meets first: the one nearest to now in the first row that has bars. */
function firstStop(stops: readonly Stop[], now: number): string | null {
  const row = stops[0]?.row;
  const [nearest] = stops
    .filter((stop) => stop.row === row)
    .sort((a, b) => Math.abs(a.middle - now) - Math.abs(b.middle - now));
  return nearest?.id ?? null;
}
