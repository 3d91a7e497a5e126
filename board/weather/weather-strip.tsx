import { useMemo } from 'react';
import type { Axis } from '../board/layout/axis.js';
import { type Stretch, within } from '../board/layout/window.js';
import { dayStop } from '../board/layout/stops.js';
import { dayWords } from '../time/moment-words.js';
import { ClosedBands } from './closed-bands.js';
import { type DayWeather, dayWeather, forecastEnd } from './layout/day-weather.js';
import { skyLines } from './layout/sky-lines.js';
import { STRIP, stripHeight } from './layout/strip-measures.js';
import { weatherCells, type WeatherCell } from './layout/weather-cells.js';
import type { SiteWeather } from './site-weather.js';
import { windowLines } from './words/window-lines.js';
import { skyWords } from './words/sky-words.js';
import './weather-strip.css';

interface WeatherStripProps {
  readonly job: { readonly id: string; readonly number: number };
  /** Null until the weather has been asked for and answered. */
  readonly site: SiteWeather | null;
  readonly axis: Axis;
  /** What of the days is drawn. */
  readonly days: Stretch;
  readonly now: number;
  readonly zone: string;
  /** How many kinds of work the row has to come, and whether each has a band of its own. */
  readonly kinds: number;
  readonly byKind: boolean;
  /** Where visits stand, in pixels: words keep clear of them. */
  readonly visits: readonly number[];
  readonly tabStop: string | null;
  readonly focused: string | null;
  readonly onFocus: (stop: string) => void;
  readonly onHover: (stop: string | null) => void;
}

/** Least width of a day in which low and high fit, in which the low alone does, and in which rain has its amount. */
const BOTH = 64;
const LOW = 30;
const AMOUNT = 92;

/**
 * The weather of the site over the bars of its job: low and high, the course of the temperature with the level of 32 °F,
 * wind, rain, and when its limits close the work to come. Past the forecast it is unknown, and drawn so.
 */
export function WeatherStrip(props: WeatherStripProps) {
  const { job, site, axis, days, now, zone, kinds, byKind, visits, tabStop, focused, onFocus, onHover } =
    props;
  const forecast = site?.forecast ?? null;
  const windows = useMemo(() => site?.weatherWindows ?? [], [site]);
  const weather = useMemo(() => dayWeather(forecast, axis.days), [forecast, axis]);
  const lines = useMemo(() => skyLines(forecast?.hours ?? [], axis), [forecast, axis]);
  const cells = useMemo(() => weatherCells(weather, forecast, axis, now), [weather, forecast, axis, now]);
  const height = stripHeight(kinds, byKind);
  if (!site) return null;
  const end = Math.max(now, forecastEnd(forecast) ?? now);
  const unknownFrom = end < axis.end ? axis.x(end) : null;
  const words = (cell: WeatherCell): string => {
    const day = axis.days.find(({ date }) => date === cell.date);
    const sky = weather.get(cell.date);
    const head = `${job.number}, weather of ${day ? dayWords(day.start, zone) : cell.date}`;
    if (!day || !sky) return `${head} and on: unknown, the forecast does not reach that far`;
    const closed = windows.filter((one) =>
      windowLines(one, Math.max(day.start, now), day.end, zone).some(({ kind }) => kind === 'closed'),
    );
    return `${head}: ${skyWords(sky)}. ${
      closed.length === 0
        ? 'No limit is broken'
        : `Closed for a time: ${closed.map(({ name }) => name).join(', ')}`
    }`;
  };
  return (
    <div className="weather" role="presentation" style={{ height }}>
      <svg className="weather-lines" width={axis.width} height={height} aria-hidden="true">
        {unknownFrom !== null && (
          <rect
            className="weather-beyond"
            x={unknownFrom}
            y={STRIP.figures}
            width={axis.width - unknownFrom}
            height={height - STRIP.figures - STRIP.below}
            fill="url(#weather-unknown)"
          />
        )}
        {lines.rain.map(({ x, width, y, height: tall }) => (
          <rect
            key={x}
            className="weather-rain"
            x={x}
            y={y}
            width={width}
            height={tall}
            fill="url(#weather-rain)"
          />
        ))}
        {lines.temperature && (
          <path
            className="weather-freezing"
            d={`M${axis.x(now)} ${lines.freezing}H${unknownFrom ?? axis.width}`}
          />
        )}
        <path className="weather-temperature" d={lines.temperature} />
        <path className="weather-wind" d={lines.wind} />
        <ClosedBands windows={windows} axis={axis} byKind={byKind} from={axis.x(now)} />
      </svg>
      {unknownFrom !== null && <Unknown from={unknownFrom} axis={axis} visits={visits} />}
      {cells.map((cell) => {
        const stop = dayStop(job.id, cell.date);
        if (!within(days, cell.left, cell.left + cell.width) && stop !== tabStop) return null;
        return (
          <div
            key={cell.date}
            role="gridcell"
            id={stop}
            data-stop={stop}
            className="weather-cell"
            data-figures={figures(weather.get(cell.date), axis.dayWidth)}
            style={{ left: cell.left, width: cell.width, height }}
            tabIndex={stop === tabStop ? 0 : -1}
            aria-label={words(cell)}
            aria-selected={stop === focused}
            aria-describedby={stop === focused ? 'detail-weather' : undefined}
            onFocus={() => onFocus(stop)}
            onMouseEnter={() => onHover(stop)}
            onMouseLeave={() => onHover(null)}
          />
        );
      })}
    </div>
  );
}

/** Low and high of a day, and its rain, as far as the day has room for them. */
function figures(day: DayWeather | undefined, dayWidth: number): string | undefined {
  if (!day || dayWidth < LOW) return undefined;
  const rain = day.rainInches ?? 0;
  const wet = rain >= 0.05 ? ` ☂${dayWidth >= AMOUNT ? ` ${rain.toFixed(1)} in` : ''}` : '';
  return (dayWidth >= BOTH ? `${day.low}/${day.high}°` : `${day.low}°`) + wet;
}

interface UnknownProps {
  readonly from: number;
  readonly axis: Axis;
  readonly visits: readonly number[];
}

/** Where the forecast ends; the words stand beside the figures of its last day and keep clear of visits. */
function Unknown({ from, axis, visits }: UnknownProps) {
  const figures = axis.dayWidth >= BOTH ? 54 : axis.dayWidth >= LOW ? 30 : 0;
  const dayLeft = Math.floor(from / axis.dayWidth) * axis.dayWidth;
  const left = from > dayLeft && from < dayLeft + figures ? dayLeft + figures : from;
  const taken = visits.some((x) => x > left - 10 && x < left + 110);
  return (
    <span
      aria-hidden="true"
      className={taken ? 'weather-unknown weather-unknown-late' : 'weather-unknown'}
      style={{ left, width: axis.width - left }}
    >
      weather unknown
    </span>
  );
}
