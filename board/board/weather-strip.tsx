import { useMemo } from 'react';
import type { BoardWeatherQuery } from '../api/documents.js';
import type { Axis } from './layout/axis.js';
import { dayWeather, forecastEnd } from './layout/day-weather.js';

interface WeatherStripProps {
  readonly forecast: BoardWeatherQuery['board']['jobs'][number]['site']['forecast'];
  /** Whether the weather has been asked for and answered. */
  readonly known: boolean;
  readonly axis: Axis;
  /** Where visits stand, in pixels: words keep clear of them. */
  readonly visits: readonly number[];
}

/** Least width of a day in which low and high fit, and in which the low alone does. */
const BOTH = 64;
const LOW = 30;

/** The site's forecast along the top of its row: low and high in °F; past the forecast the weather is unknown. */
export function WeatherStrip({ forecast, known, axis, visits }: WeatherStripProps) {
  const weather = useMemo(() => dayWeather(forecast, axis.days), [forecast, axis]);
  if (!known) return null;
  const end = forecastEnd(forecast) ?? axis.start;
  const unknownFrom = end < axis.end ? axis.x(end) : null;
  const taken = visits.some((x) => unknownFrom !== null && x > unknownFrom - 10 && x < unknownFrom + 110);
  return (
    <div className="weather" aria-hidden="true">
      {axis.days.map(({ date }, index) => {
        const day = weather.get(date);
        if (!day || axis.dayWidth < LOW) return null;
        return (
          <span key={date} className="weather-day" style={{ left: index * axis.dayWidth + 4 }}>
            {axis.dayWidth >= BOTH ? `${day.low}/${day.high}°` : `${day.low}°`}
            {day.rainInches >= 0.05 && <span className="weather-wet">☂</span>}
          </span>
        );
      })}
      {unknownFrom !== null && (
        <span
          className={taken ? 'weather-unknown weather-unknown-late' : 'weather-unknown'}
          style={{ left: unknownFrom, width: axis.width - unknownFrom }}
        >
          weather unknown
        </span>
      )}
    </div>
  );
}
