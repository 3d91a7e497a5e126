import { add, direction, dot, scale, subtract, type Point } from '../../entry/geometry/point.js';
import type { Field, Passage } from './field.js';
import type { RingSide } from './inner-ring.js';
import type { RingPlace } from './spine.js';

/** A place where the cable can leave one field for the next: on both rings and on the line that they share. */
export interface Crossing {
  readonly from: RingPlace;
  readonly line: Point;
  readonly to: RingPlace;
}

/**
 * Where the cable may cross from one field to the next, square to the line that they share: as far to either end as both
 * setbacks allow. On each ring it is a corner, or far enough from one for two bends.
 */
export function crossings(
  field: Field,
  ring: readonly RingSide[],
  nextRing: readonly RingSide[],
  passage: Passage,
  leastBend: number,
): Crossing[] {
  const side = field.sides[passage.fromSide]!;
  const along = direction(side.a, side.b);
  const on = ring.findIndex((s) => s.side === passage.fromSide);
  const nextOn = nextRing.findIndex((s) => s.side === passage.toSide);
  if (on < 0 || nextOn < 0) return [];
  const reach = ({ a, b }: RingSide) =>
    [a, b].map((p) => dot(subtract(p, side.a), along)).sort((p, q) => p - q) as [number, number];
  const spans = [reach(ring[on]!), reach(nextRing[nextOn]!)];
  const [low, high] = [Math.max(...spans.map((s) => s[0])), Math.min(...spans.map((s) => s[1]))];
  const room = 2 * leastBend;
  const good = (t: number) =>
    t >= low - 1e-9 &&
    t <= high + 1e-9 &&
    spans.every((span) => span.every((end) => Math.abs(t - end) < 1e-6 || Math.abs(t - end) >= room - 1e-9));
  const first = [low, low + room, low + 2 * room].find(good);
  const last = [high, high - room, high - 2 * room].find(good);
  const places = [first, last].filter((t): t is number => t !== undefined);
  const project = (ringSide: RingSide, t: number): Point => {
    const p = dot(subtract(ringSide.a, side.a), along);
    return add(ringSide.a, scale(along, t - p));
  };
  return [...new Set(places)].map((t) => ({
    from: { at: project(ring[on]!, t), on },
    line: add(side.a, scale(along, t)),
    to: { at: project(nextRing[nextOn]!, t), on: nextOn },
  }));
}
