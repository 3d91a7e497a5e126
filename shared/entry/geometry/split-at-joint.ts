import { between, distance, distanceToLine, type Point } from './point.js';

/** A side of an outline with the width that is kept free along it, in. */
export interface KeptSide {
  readonly a: Point;
  readonly b: Point;
  readonly setback: number;
}

const HAIR = 0.01;

/**
 * The two parts of an outline on either hand of a movement joint that runs straight from one side to another; null
 * when the joint does not end on two different sides.
 */
export function splitAtJoint(
  sides: readonly KeptSide[],
  [from, to]: readonly [Point, Point],
  setback: number,
): readonly [KeptSide[], KeptSide[]] | null {
  const on = (p: Point) => sides.findIndex(({ a, b }) => distanceToLine(p, a, b) < HAIR);
  const [i, j] = [on(from), on(to)];
  if (i < 0 || j < 0 || i === j) return null;
  return [part(sides, i, from, j, to, setback), part(sides, j, to, i, from, setback)];
}

/** From the joint's start on side i on to its end on side j, and back along the joint. */
function part(
  sides: readonly KeptSide[],
  i: number,
  from: Point,
  j: number,
  to: Point,
  setback: number,
): KeptSide[] {
  const out: KeptSide[] = [{ a: from, b: sides[i]!.b, setback: sides[i]!.setback }];
  for (let k = (i + 1) % sides.length; k !== j; k = (k + 1) % sides.length) out.push(sides[k]!);
  out.push({ a: sides[j]!.a, b: to, setback: sides[j]!.setback }, { a: to, b: from, setback });
  return out.filter(({ a, b }) => distance(a, b) > HAIR);
}

/** The stretch that two sides share when they lie along the same line, or null when they share less than `least` in. */
export function sharedStretch(one: KeptSide, other: KeptSide, least: number): readonly [Point, Point] | null {
  const length = distance(one.a, one.b);
  const along = (p: Point) =>
    ((p.x - one.a.x) * (one.b.x - one.a.x) + (p.y - one.a.y) * (one.b.y - one.a.y)) / length;
  const off = (p: Point) =>
    Math.abs((p.x - one.a.x) * (one.b.y - one.a.y) - (p.y - one.a.y) * (one.b.x - one.a.x)) / length;
  if (off(other.a) > HAIR || off(other.b) > HAIR) return null;
  const ends = [along(other.a), along(other.b)].sort((a, b) => a - b) as [number, number];
  const [low, high] = [Math.max(0, ends[0]), Math.min(length, ends[1])];
  if (high - low < least) return null;
  return [between(one.a, one.b, low / length), between(one.a, one.b, high / length)];
}
