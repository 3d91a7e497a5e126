import { memo, useMemo } from 'react';
import { Bar } from './bar.js';
import { HoldShades } from './hold-shades.js';
import type { Axis } from './layout/axis.js';
import { holdStretches } from './layout/hold-stretches.js';
import { visitPlace } from './layout/visit-bubble.js';
import type { PlacedRow } from './layout/lay-out-row.js';
import { type BoardData, weatherKindsOf } from './layout/rows.js';
import { type Stretch, within } from './layout/window.js';
import { barStop } from './layout/stops.js';
import type { Preview } from '../moving/preview.js';
import { PreviewLayer } from '../moving/preview-layer.js';
import { RowHead } from './row-head.js';
import { VisitMarks } from './visit-marks.js';
import type { SiteWeather } from '../weather/site-weather.js';
import { WeatherStrip } from '../weather/weather-strip.js';

interface ChartRowProps {
  readonly placed: PlacedRow;
  /** Its place among the rows, from 0, and how far down it stands. */
  readonly index: number;
  readonly top: number;
  /** What of the days is drawn. */
  readonly days: Stretch;
  readonly board: BoardData;
  readonly site: SiteWeather | null;
  readonly byKind: boolean;
  /** Whether days are wide enough for their weather. */
  readonly weathered: boolean;
  readonly axis: Axis;
  readonly now: number;
  readonly zone: string;
  readonly tabStop: string | null;
  readonly focused: string | null;
  readonly onFocus: (stop: string) => void;
  readonly onHover: (stop: string | null) => void;
  /** What a tried move would do, where it does something in this row; else null. */
  readonly preview: Preview | null;
  readonly canMove: (phaseId: string) => boolean;
}

/** One row: its head, and its bars over the weather of its site. */
export const ChartRow = memo(function ChartRow(props: ChartRowProps) {
  const {
    placed,
    board,
    site,
    byKind,
    axis,
    now,
    zone,
    tabStop,
    focused,
    onFocus,
    onHover,
    preview,
    canMove,
  } = props;
  const { index, top, days, weathered } = props;
  const { row, bars, height } = placed;
  const holds = useMemo(() => holdStretches(placed, board, axis), [placed, board, axis]);
  const shown = bars.filter(
    ({ phase, left, reach, labelPlace, labelRoom }) =>
      within(days, left, left + reach + (labelPlace === 'after' ? labelRoom : 0)) ||
      barStop(phase.id) === tabStop,
  );
  const visits = row.job ? board.inspections.filter(({ job }) => job.id === row.id) : [];
  return (
    <div role="row" aria-rowindex={index + 2} className="chart-row" style={{ top, height }}>
      <RowHead row={row} site={site} holds={holds} visits={visits} now={now} zone={zone} />
      <div role="presentation" className="row-days" style={{ width: axis.width }}>
        {row.job && weathered && (
          <WeatherStrip
            job={row.job}
            site={site}
            axis={axis}
            days={days}
            now={now}
            zone={zone}
            kinds={weatherKindsOf(row).length}
            byKind={byKind}
            visits={visits.flatMap((visit) => visitPlace(visit, axis)?.bubble ?? [])}
            tabStop={tabStop}
            focused={focused}
            onFocus={onFocus}
            onHover={onHover}
          />
        )}
        <HoldShades holds={holds} axis={axis} height={height} />
        {row.job && <VisitMarks visits={visits} axis={axis} height={height} zone={zone} />}
        {shown.map((bar) => (
          <Bar
            key={bar.phase.id}
            bar={bar}
            zone={zone}
            tabStop={barStop(bar.phase.id) === tabStop}
            selected={barStop(bar.phase.id) === focused}
            onFocus={onFocus}
            onHover={onHover}
            ghost={preview?.places.has(bar.phase.id) ?? false}
            movable={canMove(bar.phase.id)}
          />
        ))}
        {preview && <PreviewLayer placed={placed} preview={preview} axis={axis} zone={zone} />}
        {bars.length === 0 && (
          <span className="row-empty" style={{ top: height - 30, left: Math.max(0, days.from) + 200 }}>
            nothing in these days
          </span>
        )}
      </div>
    </div>
  );
});
