import { memo, useMemo } from 'react';
import type { BoardWeatherQuery } from '../api/documents.js';
import { Bar } from './bar.js';
import { HoldShades } from './hold-shades.js';
import type { Axis } from './layout/axis.js';
import { holdStretches } from './layout/hold-stretches.js';
import { visitPlace } from './layout/visit-bubble.js';
import type { PlacedRow } from './layout/lay-out-row.js';
import type { BoardData } from './layout/rows.js';
import { RowHead } from './row-head.js';
import { VisitMarks } from './visit-marks.js';
import { WeatherStrip } from './weather-strip.js';

interface ChartRowProps {
  readonly placed: PlacedRow;
  readonly board: BoardData;
  readonly weather: BoardWeatherQuery['board'] | null;
  readonly axis: Axis;
  readonly zone: string;
  readonly tabStop: string | null;
  readonly focused: string | null;
  readonly onFocus: (phaseId: string) => void;
  readonly onHover: (phaseId: string | null) => void;
}

/** One row: its head, and its bars over the weather of its site. */
export const ChartRow = memo(function ChartRow(props: ChartRowProps) {
  const { placed, board, weather, axis, zone, tabStop, focused, onFocus, onHover } = props;
  const { row, bars, height } = placed;
  const holds = useMemo(() => holdStretches(placed, board, axis), [placed, board, axis]);
  const visits = row.job ? board.inspections.filter(({ job }) => job.id === row.id) : [];
  const site = weather?.jobs.find(({ id }) => id === row.id)?.site ?? null;
  return (
    <div role="row" className="chart-row" style={{ minHeight: height }}>
      <RowHead row={row} holds={holds} visits={visits} zone={zone} />
      <div role="presentation" className="row-days" style={{ width: axis.width }}>
        {row.job && (
          <WeatherStrip
            forecast={site?.forecast ?? null}
            known={weather !== null}
            axis={axis}
            visits={visits.flatMap((visit) => visitPlace(visit, axis)?.bubble ?? [])}
          />
        )}
        <HoldShades holds={holds} axis={axis} height={height} />
        {row.job && <VisitMarks visits={visits} axis={axis} height={height} zone={zone} />}
        {bars.map((bar) => (
          <Bar
            key={bar.phase.id}
            bar={bar}
            zone={zone}
            tabStop={bar.phase.id === tabStop}
            selected={bar.phase.id === focused}
            onFocus={onFocus}
            onHover={onHover}
          />
        ))}
        {bars.length === 0 && <span className="row-empty">nothing in these days</span>}
      </div>
    </div>
  );
});
