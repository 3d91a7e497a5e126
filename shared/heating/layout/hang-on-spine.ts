import type { Point } from '../../entry/geometry/point.js';
import type { Loop } from './bands.js';
import { freeSpans, type Zone } from './zone.js';

/** Where a loop's rows run straight on to the spine: its open end, and where each row meets the spine. */
export interface Hanging {
  readonly end: 'x1' | 'x2';
  readonly at1: Point;
  readonly at2: Point;
  /** How far along the spine, to take the earlier one of two. */
  readonly along: number;
}

/** How much farther than the spacing the spine may be from the end of a loop that hangs on it. */
const REACH = 2.4;

/**
 * Where a loop can hang on the spine with one of its ends, the earlier place first; null when nowhere. Its rows meet the
 * spine at a corner of it or no nearer to one than `room`, which two bends take.
 */
export function hangOnSpine(
  loop: Loop,
  spine: readonly Point[],
  zone: Zone,
  spacing: number,
  room: number,
): Hanging | null {
  const found: Hanging[] = [];
  for (let i = 0; i + 1 < spine.length; i++) {
    const [a, b] = [spine[i]!, spine[i + 1]!];
    const [low, high] = [Math.min(a.y, b.y), Math.max(a.y, b.y)];
    if (high - low < 1e-6 || loop.y1 < low - 1e-4 || loop.y2 > high + 1e-4) continue;
    const meet = (y: number): Point =>
      [a, b].find((corner) => Math.abs(corner.y - y) < 1e-4) ?? {
        x: a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x),
        y,
      };
    const [at1, at2] = [meet(loop.y1), meet(loop.y2)];
    if (![at1, at2].every((at) => [a, b].every((corner) => clearOf(at, corner, room)))) continue;
    const slant = Math.hypot(b.x - a.x, b.y - a.y) / Math.abs(b.y - a.y);
    for (const end of ['x1', 'x2'] as const) {
      const gaps = [at1, at2].map((at) => (end === 'x2' ? at.x - loop.x2 : loop.x1 - at.x));
      if (turnsIn(spine, i, at1, end) || turnsIn(spine, i, at2, end)) continue;
      if (Math.min(...gaps) < 0 || Math.max(...gaps) > REACH * spacing * slant + Math.abs(at1.x - at2.x))
        continue;
      if (!reaches(loop, end, at1, at2, zone)) continue;
      found.push({ end, at1, at2, along: i });
    }
  }
  return found.sort((p, q) => p.along - q.along)[0] ?? null;
}

/** Whether a row meets stretch i of the spine at a corner from which the spine itself goes on along the row. */
function turnsIn(spine: readonly Point[], i: number, at: Point, end: 'x1' | 'x2'): boolean {
  const beyond = at === spine[i] ? spine[i - 1] : at === spine[i + 1] ? spine[i + 2] : undefined;
  if (!beyond) return false;
  return end === 'x2' ? beyond.x < at.x - 1e-6 : beyond.x > at.x + 1e-6;
}

const clearOf = (at: Point, corner: Point, room: number): boolean => {
  const away = Math.hypot(at.x - corner.x, at.y - corner.y);
  return away < 1e-4 || away >= room - 1e-6;
};

/** Whether both rows may be led on to the spine without meeting anything. */
function reaches(loop: Loop, end: 'x1' | 'x2', at1: Point, at2: Point, zone: Zone): boolean {
  const free = (y: number, x: number) => {
    const [from, to] = end === 'x2' ? [loop.x2, x] : [x, loop.x1];
    return freeSpans(zone, [], y, y).some(([low, high]) => low <= from + 1e-5 && high >= to - 1e-5);
  };
  return free(loop.y1, at1.x) && free(loop.y2, at2.x);
}
