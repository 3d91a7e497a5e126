import type { Point } from '../../entry/geometry/point.js';
import type { Loop } from './bands.js';
import type { Span } from './capsule.js';

/** A stretch of row that other loops may be hung from. */
export interface Row {
  readonly y: number;
  readonly span: Span;
  /** Stretches already opened, with what their bends take on both sides. */
  readonly opened: Span[];
}

/** Where two rows are opened towards each other: two places on each, `gap` apart. */
export interface Opening {
  readonly from: number;
  readonly to: number;
}

/** Rows farther apart than so many spacings are not joined. */
export const JOIN_REACH = 1.95;

/**
 * A place to open two facing rows so that one runs over into the other by half turns. `room` is kept beside the opening
 * for the bends, at the ends of the rows and beside other openings; null when there is no such place.
 */
export function findOpening(one: Row, other: Row, gap: number, room: number): Opening | null {
  const low = Math.max(one.span[0], other.span[0]) + room;
  const high = Math.min(one.span[1], other.span[1]) - room;
  const opened = [...one.opened, ...other.opened].sort((p, q) => p[0] - q[0]);
  let from = low;
  for (const [a, b] of opened) {
    if (from + gap + room <= a) break;
    from = Math.max(from, b + room);
  }
  return from + gap <= high ? { from, to: from + gap } : null;
}

/** A loop opened on one of its rows, from the opening's first place around to its second. */
export function openedLoop({ x1, x2, y1, y2 }: Loop, row: 1 | 2, { from, to }: Opening): Point[] {
  const [own, far] = row === 1 ? [y1, y2] : [y2, y1];
  return [
    { x: from, y: own },
    { x: x1, y: own },
    { x: x1, y: far },
    { x: x2, y: far },
    { x: x2, y: own },
    { x: to, y: own },
  ];
}
