import { element, label } from '../../../shared/drawing/svg.js';

/** A line of a chart. */
export interface ChartLine {
  readonly points: readonly (readonly [x: number, y: number])[];
  /** Each point gets a mark of its own. */
  readonly marked?: boolean;
}

/** A chart of lines over one axis, in plain numbers. */
export interface Chart {
  readonly title: string;
  readonly lines: readonly ChartLine[];
  /** Limits drawn across, with their words. */
  readonly levels: readonly (readonly [y: number, words: string])[];
  readonly xWords: (x: number) => string;
  readonly yWords: (y: number) => string;
  /** Places of the strokes on the x axis; round ones where left out. */
  readonly xTicks?: readonly number[];
}

/** Size on paper, in. */
export const CHART_WIDTH = 7;
export const CHART_HEIGHT = 2.1;

const FIELD = { left: 0.75, right: 1.35, top: 0.12, bottom: 0.3 } as const;
const WORDS = 0.1;

/** Draws a chart as SVG in inches of paper; null where fewer than two points are there to draw. */
export function drawChart(chart: Chart): string | null {
  const points = chart.lines.flatMap((line) => line.points);
  if (points.length < 2) return null;
  const [x0, x1] = range(points.map(([x]) => x));
  const [low, high, step] = niceScale([...points.map(([, y]) => y), ...chart.levels.map(([y]) => y)]);
  const right = CHART_WIDTH - FIELD.right;
  const bottom = CHART_HEIGHT - FIELD.bottom;
  const x = (value: number) => FIELD.left + ((value - x0) / (x1 - x0)) * (right - FIELD.left);
  const y = (value: number) => bottom - ((value - low) / (high - low)) * (bottom - FIELD.top);
  const size = { 'font-size': WORDS };
  const ticks = Array.from({ length: Math.round((high - low) / step) + 1 }, (_, i) => low + i * step);
  const places = chart.xTicks ?? evenTicks(x0, x1);
  const parts = [
    ...ticks.flatMap((tick) => [
      line(FIELD.left, y(tick), right, y(tick), 'grid'),
      label(FIELD.left - 0.06, y(tick) + WORDS * 0.35, chart.yWords(tick), { ...size, 'text-anchor': 'end' }),
    ]),
    ...places.flatMap((place) => [
      line(x(place), bottom, x(place), bottom + 0.05, 'axis'),
      label(x(place), bottom + 0.18, chart.xWords(place), { ...size, 'text-anchor': 'middle' }),
    ]),
    ...chart.levels.flatMap(([value, words]) => [
      line(FIELD.left, y(value), right, y(value), 'level'),
      label(right + 0.06, y(value) + WORDS * 0.35, words, size),
    ]),
    line(FIELD.left, FIELD.top, FIELD.left, bottom, 'axis'),
    line(FIELD.left, bottom, right, bottom, 'axis'),
    ...chart.lines.map(({ points: course, marked }) => courseOf(course, marked ?? false, x, y)),
  ];
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${CHART_WIDTH}in`,
      height: `${CHART_HEIGHT}in`,
      viewBox: `0 0 ${CHART_WIDTH} ${CHART_HEIGHT}`,
    },
    element('style', {}, STYLE) + parts.join(''),
  );
}

const STYLE =
  'text{fill:#1d1b16}.axis{stroke:#1d1b16;stroke-width:.01}.grid{stroke:#cfc8b4;stroke-width:.006}' +
  '.level{stroke:#a3341f;stroke-width:.01;stroke-dasharray:.06 .04}.course{fill:none;stroke:#1d1b16;stroke-width:.018}.mark{fill:#1d1b16}';

const line = (x1: number, y1: number, x2: number, y2: number, kind: string): string =>
  element('line', { class: kind, x1, y1, x2, y2 });

function courseOf(
  points: ChartLine['points'],
  marked: boolean,
  x: (value: number) => number,
  y: (value: number) => number,
): string {
  const places = points.map(([px, py]) => [x(px).toFixed(3), y(py).toFixed(3)] as const);
  const d = `M${places.map((place) => place.join(' ')).join('L')}`;
  const marks = marked ? places.map(([cx, cy]) => element('circle', { class: 'mark', cx, cy, r: 0.03 })) : [];
  return element('path', { class: 'course', d }) + marks.join('');
}

/** Round places within a stretch. */
function evenTicks(from: number, to: number): number[] {
  const [low, high, step] = niceScale([from, to]);
  const all = Array.from({ length: Math.round((high - low) / step) + 1 }, (_, i) => low + i * step);
  return all.filter((tick) => tick >= from && tick <= to);
}

/** Both ends of some values, apart from each other even where they are one. */
function range(values: readonly number[]): readonly [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return high > low ? [low, high] : [low - 0.5, high + 0.5];
}

/** A scale of round steps that holds all values: low, high, step. */
export function niceScale(values: readonly number[]): readonly [number, number, number] {
  const [least, most] = range(values);
  const rough = (most - least) / 4;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= rough) ?? 10 * power;
  const low = Math.floor(least / step + 1e-9) * step;
  const high = Math.ceil(most / step - 1e-9) * step;
  return [low, high > low ? high : low + step, step];
}
