import { useEffect, useMemo } from 'react';
import { BoardWeatherDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { ChartRow } from './chart-row.js';
import type { Axis } from './layout/axis.js';
import type { PlacedRow } from './layout/lay-out-row.js';
import { type BoardData, weatherKindsOf } from './layout/rows.js';
import type { Preview } from '../moving/preview.js';
import { useSeen } from './use-seen.js';
import type { WeatherAnswer, WeatherOf } from './weather-of.js';

interface RowGroupProps {
  readonly rows: readonly PlacedRow[];
  readonly board: BoardData;
  readonly range: { readonly from: string; readonly to: string };
  readonly byKind: boolean;
  readonly axis: Axis;
  readonly now: number;
  readonly zone: string;
  readonly weatherOf: WeatherOf;
  readonly onWeather: (answer: WeatherAnswer) => void;
  readonly tabStop: string | null;
  readonly focused: string | null;
  readonly onFocus: (stop: string) => void;
  readonly onHover: (stop: string | null) => void;
  readonly preview: Preview | null;
  readonly canMove: (phaseId: string) => boolean;
}

const HOUR_MS = 3_600_000;

/** Some rows under one another. Their weather is asked for once any of them has come in sight, so never for all jobs at once. */
export function RowGroup({ rows, range, onWeather, weatherOf, ...shared }: RowGroupProps) {
  const { board, byKind, axis, now, zone, tabStop, focused, onFocus, onHover, preview, canMove } = shared;
  const { ref, seen } = useSeen();
  // Asked from the full hour, so that the question stays the same while the clock goes on.
  const since = Math.max(Date.parse(range.from), Math.floor(now / HOUR_MS) * HOUR_MS);
  const jobIds = useMemo(() => rows.flatMap(({ row }) => row.job?.id ?? []), [rows]);
  const limitKeys = useMemo(
    () => [...new Set(rows.flatMap(({ row }) => weatherKindsOf(row)))].sort(),
    [rows],
  );
  const ahead = since < Date.parse(range.to);
  const { data } = useQuery(
    BoardWeatherDocument,
    {
      from: range.from,
      to: range.to,
      since: new Date(ahead ? since : Date.parse(range.from)).toISOString(),
      ahead,
      jobIds,
      limitKeys,
    },
    { when: seen && jobIds.length > 0 },
  );
  useEffect(() => {
    if (data) onWeather(ownKinds(data.board, rows));
  }, [data, onWeather, rows]);
  return (
    <div role="rowgroup" ref={ref}>
      {rows.map((placed) => (
        <ChartRow
          key={placed.row.id}
          placed={placed}
          board={board}
          site={weatherOf.get(placed.row.id) ?? null}
          byKind={byKind}
          axis={axis}
          now={now}
          zone={zone}
          tabStop={tabStop}
          focused={focused}
          onFocus={onFocus}
          onHover={onHover}
          preview={preview && reaches(preview, placed) ? preview : null}
          canMove={canMove}
        />
      ))}
    </div>
  );
}

/** Whether a tried move does anything in a row, so that the others need not be drawn anew. */
const reaches = ({ places, tried }: Preview, { row }: PlacedRow): boolean =>
  row.phases.some(({ id }) => id === tried.phaseId || places.has(id));

/** The answer with each job's windows of its own kinds of work only: they were asked for all rows together. */
function ownKinds(answer: WeatherAnswer, rows: readonly PlacedRow[]): WeatherAnswer {
  const kinds = new Map(rows.map(({ row }) => [row.id, weatherKindsOf(row)]));
  return {
    ...answer,
    jobs: answer.jobs.map(({ id, site }) => ({
      id,
      site: {
        ...site,
        weatherWindows: (site.weatherWindows ?? []).filter(({ limitKey }) =>
          kinds.get(id)?.includes(limitKey),
        ),
      },
    })),
  };
}
