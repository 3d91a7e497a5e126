import type { Capsule, Span } from './capsule.js';
import { freeSpans, type Zone } from './zone.js';

/** A pair of runs, out and back: rows at `y1` and `y2`, along the stretch from `x1` to `x2`. */
export interface Loop {
  readonly x1: number;
  readonly x2: number;
  readonly y1: number;
  readonly y2: number;
  /** Number of its band, counted along y. */
  readonly band: number;
}

/** Rows may lie this much closer than asked, never closer than the cable allows, and this much farther apart. */
const TIGHT = 0.8;
const SPREAD = 1.5;
/** What a band that lies on the line of the zone counts more. */
const ON_THE_LINE = 0.3;
/** Steps of a spacing in which bands are tried. */
const STEPS = 12;
/** How much a spacing that is not the one asked for counts against a band. */
const UNEVEN = 0.5;

/**
 * Bands of two rows each that fill a zone best beside the spine: most of the surface within half a spacing of a row,
 * at spacings as near to `asked` as the zone allows. A zone whose width does not change along y
 * gets even rows; any other the best of all positions on a fine grid.
 */
export function fillWithBands(
  zone: Zone,
  spine: readonly Capsule[],
  { asked, closest, greatest }: Spacing,
): Loop[] {
  const tight = tightest({ asked, closest, greatest });
  const range = heights(zone, spine, tight);
  if (!range) return [];
  const even = evenBands(zone, spine, { asked, closest: tight, greatest }, range);
  return (
    even ??
    bestBands(zone, spine, { asked, closest: tight, greatest: Math.min(greatest, asked * SPREAD) }, range)
  );
}

/** The closest that rows may lie to each other and to the spine when a spacing is asked for. */
export const tightest = ({ asked, closest }: Spacing): number => Math.max(closest, TIGHT * asked);

/** Spacing on centres, in: what is asked for, and the limits. */
export interface Spacing {
  readonly asked: number;
  readonly closest: number;
  readonly greatest: number;
}

const longEnough = ([from, to]: Span, spacing: number): boolean => to - from >= 2 * spacing;

function heights(zone: Zone, spine: readonly Capsule[], spacing: number): Span | null {
  const ys = zone.outline.map((p) => p.y);
  const step = spacing / STEPS;
  const free = (y: number) => freeSpans(zone, spine, y, y).some((span) => longEnough(span, spacing));
  const edge = (from: number, to: number): number | null => {
    const by = Math.sign(to - from) * step;
    for (let y = from; (to - y) * by > 0; y += by) {
      if (!free(y)) continue;
      let [out, within] = [y - by, y];
      for (let k = 0; k < 30; k++) {
        const half = (out + within) / 2;
        if (free(half)) within = half;
        else out = half;
      }
      return within;
    }
    return null;
  };
  const low = edge(Math.min(...ys), Math.max(...ys));
  const high = edge(Math.max(...ys), Math.min(...ys));
  return low === null || high === null || high - low < spacing ? null : [low, high];
}

/** Even rows over the whole height when one stretch of x is free all along it; else null. */
function evenBands(
  zone: Zone,
  spine: readonly Capsule[],
  { asked, closest, greatest }: Spacing,
  [low, high]: Span,
): Loop[] | null {
  const whole = freeSpans(zone, spine, low, high);
  const middle = freeSpans(zone, spine, (low + high) / 2, (low + high) / 2);
  if (whole.length !== 1 || middle.length !== 1) return null;
  const [[x1, x2], [m1, m2]] = [whole[0]!, middle[0]!];
  const hair = asked / STEPS;
  if (x1 - m1 > hair || m2 - x2 > hair || x2 - x1 < 2 * closest) return null;
  // A row of the spine at either end is spaced like the others.
  const alone = heights(zone, [], closest) ?? [low, high];
  const [before, after] = [low - alone[0] > 1e-3 ? 1 : 0, alone[1] - high > 1e-3 ? 1 : 0];
  const height = high - low + (before + after) * closest;
  const gaps = (n: number) => 2 * n - 1 + before + after;
  let n = 1;
  const fits = (count: number) => height / gaps(count) >= closest - 1e-6;
  while (fits(n + 1) && nearer(height / gaps(n + 1), height / gaps(n), asked)) n++;
  const pitch = Math.min(height / gaps(n), greatest);
  const spare = height - pitch * gaps(n);
  const first = low + before * (pitch - closest) + spare / 2;
  return Array.from({ length: n }, (_, band) => {
    const y1 = first + 2 * band * pitch;
    return { x1, x2, y1, y2: y1 + pitch, band };
  });
}

/** Stretches beside each other, shortened where less than `least` lies between their ends. */
function keptApart(spans: readonly Span[], least: number): Span[] {
  const short = (i: number) => {
    const [left, right] = [spans[i], spans[i + 1]];
    return left && right ? Math.max(0, least - (right[0] - left[1])) / 2 : 0;
  };
  return spans.map(([from, to], i): Span => [from + short(i - 1), to - short(i)]);
}

/** Whether one spacing is nearer to what is asked than another, by their ratios. */
const nearer = (one: number, other: number, asked: number): boolean =>
  Math.abs(Math.log(one / asked)) < Math.abs(Math.log(other / asked));

/** The best bands on a grid, found from the last height backwards. */
function bestBands(
  zone: Zone,
  spine: readonly Capsule[],
  { asked, closest, greatest }: Spacing,
  [low, high]: Span,
): Loop[] {
  // The grid ends on both lines of the zone, so that rows can lie on them.
  const count = Math.ceil(((high - low) * STEPS) / asked) + 1;
  const step = (high - low) / (count - 1);
  const widths: number[] = [];
  for (let k = Math.ceil(closest / step - 1e-6); k * step <= greatest + 1e-9; k++) widths.push(k);
  const spans = (i: number, w: number): Span[] =>
    keptApart(freeSpans(zone, spine, low + i * step, low + (i + w) * step), closest).filter((span) =>
      longEnough(span, w * step),
    );
  const value = new Float64Array(count + 1);
  const choice = new Int32Array(count + 1);
  for (let i = count - 1; i >= 0; i--) {
    value[i] = value[i + 1]!;
    for (const w of widths) {
      if (i + w > count - 1) break;
      const pitch = w * step;
      const uneven = UNEVEN * Math.log(pitch / asked) ** 2;
      let gain = 0;
      for (const [from, to] of spans(i, w)) gain += (to - from + pitch) * 2 * pitch * (1 - uneven);
      // A row that just misses the line of the zone would meet a corner of the spine too closely.
      const ends = i === 0 || i + w === count - 1 ? 1 + ON_THE_LINE : 1;
      const total = gain * ends + value[Math.min(count, i + 2 * w)]!;
      if (gain > 0 && total > value[i]! + 1e-9) {
        value[i] = total;
        choice[i] = w;
      }
    }
  }
  const loops: Loop[] = [];
  for (let i = 0, band = 0; i < count;) {
    const w = choice[i]!;
    if (w === 0) {
      i++;
      continue;
    }
    for (const [x1, x2] of spans(i, w))
      loops.push({ x1, x2, y1: low + i * step, y2: low + (i + w) * step, band });
    band++;
    i += 2 * w;
  }
  return loops;
}
