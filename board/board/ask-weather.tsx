import { useEffect, useMemo } from 'react';
import { BoardWeatherDocument } from '../api/documents.js';
import { useQuery } from '../api/use-query.js';
import { type BoardRow, weatherKindsOf } from './layout/rows.js';
import type { WeatherAnswer } from './weather-of.js';

interface AskWeatherProps {
  readonly rows: readonly BoardRow[];
  readonly range: { readonly from: string; readonly to: string };
  readonly now: number;
  readonly onWeather: (answer: WeatherAnswer) => void;
}

const HOUR_MS = 3_600_000;
/** Forecasts reach about ten days; so far on the weather is asked for, however many days are drawn. */
const AHEAD_MS = 21 * 24 * HOUR_MS;

/** Asks for the weather of some rows under one another while any of them is drawn, so never for all jobs at once. Draws nothing itself. */
export function AskWeather({ rows, range, now, onWeather }: AskWeatherProps) {
  // Asked from the full hour, so that the question stays the same while the clock goes on.
  const hour = Math.floor(now / HOUR_MS) * HOUR_MS;
  const since = Math.max(Date.parse(range.from), hour);
  const to = new Date(Math.min(Date.parse(range.to), Math.max(since, hour) + AHEAD_MS)).toISOString();
  const key = rows.flatMap(({ job }) => job?.id ?? []).join(' ');
  const jobIds = useMemo(() => key.split(' ').filter(Boolean), [key]);
  const limitKeys = useMemo(() => [...new Set(rows.flatMap(weatherKindsOf))].sort(), [rows]);
  const ahead = since < Date.parse(to);
  const { data } = useQuery(
    BoardWeatherDocument,
    {
      from: range.from,
      to: Date.parse(to) > Date.parse(range.from) ? to : range.to,
      since: new Date(ahead ? since : Date.parse(range.from)).toISOString(),
      ahead,
      jobIds,
      limitKeys,
    },
    { when: jobIds.length > 0 },
  );
  useEffect(() => {
    if (data) onWeather(ownKinds({ ...data.board, from: range.from }, rows));
  }, [data, onWeather, range.from, rows]);
  return null;
}

/** The answer with each job's windows of its own kinds of work only: they were asked for all rows together. */
function ownKinds(answer: WeatherAnswer, rows: readonly BoardRow[]): WeatherAnswer {
  const kinds = new Map(rows.map((row) => [row.id, weatherKindsOf(row)]));
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
