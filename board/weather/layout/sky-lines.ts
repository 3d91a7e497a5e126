import type { Axis } from '../../board/layout/axis.js';
import { type ForecastHour, HOUR_MS } from '../site-weather.js';
import { STRIP } from './strip-measures.js';

/** The hours of a forecast as they are drawn: pixels from the left edge of the days and the top of the strip. */
export interface SkyLines {
  /** The course of the temperature; broken where it is unknown. */
  readonly temperature: string;
  /** Height of the level of 32 °F. */
  readonly freezing: number;
  /** Columns of the hours with rain, taller for more. */
  readonly rain: readonly {
    readonly x: number;
    readonly width: number;
    readonly y: number;
    readonly height: number;
  }[];
  /** Strokes of the wind: one for each 10 mph of the windiest hour of half a day. */
  readonly wind: string;
}

const FREEZING = 32;
/** An hour with less is dry for the drawing; one with this much fills the height. Inches. */
const WET = 0.01;
const POURING = 0.2;
const MOST_STROKES = 4;

/** Draws the hours of a site. The scale of the temperature holds its own coldest, its warmest and 32 °F. */
export function skyLines(hours: readonly ForecastHour[], axis: Axis): SkyLines {
  const inside = hours
    .map((hour) => ({ ...hour, moment: Date.parse(hour.at) }))
    .filter(({ moment }) => moment + HOUR_MS > axis.start && moment < axis.end);
  const temperatures = inside.flatMap(({ temperatureF }) => (temperatureF === null ? [] : [temperatureF]));
  const low = Math.min(FREEZING, ...temperatures);
  const high = Math.max(FREEZING, ...temperatures);
  const y = (value: number) =>
    round(
      STRIP.traceBottom - ((value - low) / Math.max(1, high - low)) * (STRIP.traceBottom - STRIP.traceTop),
    );
  return {
    temperature: trace(inside, axis, y),
    freezing: y(FREEZING),
    rain: inside.flatMap(({ moment, rainInches }) => {
      if (rainInches === null || rainInches < WET) return [];
      const height = round(4 + Math.min(1, rainInches / POURING) * (STRIP.traceBottom - STRIP.traceTop - 4));
      const x = round(axis.x(moment));
      return [{ x, width: round(axis.x(moment + HOUR_MS) - x), y: STRIP.traceBottom - height, height }];
    }),
    wind: axis.days.map((day) => windOf(inside, axis, day.start, day.end)).join(''),
  };
}

type Moment = ForecastHour & { readonly moment: number };

/** A line through the middle of each hour; an hour without a temperature breaks it. */
function trace(hours: readonly Moment[], axis: Axis, y: (value: number) => number): string {
  let path = '';
  let joined = 0;
  for (const { moment, temperatureF } of hours) {
    if (temperatureF === null) continue;
    path += `${moment === joined ? 'L' : 'M'}${round(axis.x(moment + HOUR_MS / 2))} ${y(temperatureF)}`;
    joined = moment + HOUR_MS;
  }
  return path;
}

function windOf(hours: readonly Moment[], axis: Axis, start: number, end: number): string {
  const middle = (start + end) / 2;
  return [
    [start, middle],
    [middle, end],
  ]
    .map(([from = 0, to = 0]) => {
      const winds = hours.flatMap(({ moment, windMph }) =>
        moment >= from && moment < to && windMph !== null ? [windMph] : [],
      );
      const strokes = Math.min(MOST_STROKES, Math.floor(Math.max(0, ...winds) / 10));
      const left = axis.x((from + to) / 2) - (strokes - 1) * 2;
      return Array.from(
        { length: strokes },
        (_, i) => `M${round(left + i * 4)} ${STRIP.windBottom}l3 -6`,
      ).join('');
    })
    .join('');
}

const round = (value: number): number => Math.round(value * 10) / 10;
