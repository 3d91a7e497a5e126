import {
  add,
  direction,
  distance,
  distanceToLine,
  dot,
  scale,
  subtract,
  type Point,
} from '../../entry/geometry/point.js';
import { gapBetween } from './capsule.js';
import type { Field, Passage } from './field.js';
import type { Ringed } from './ringed.js';
import type { RingSide } from './inner-ring.js';
import { keepOutCapsules } from './zone.js';

/** A place on the line along the setbacks, and the number of the ring's side it lies on. */
export interface RingPlace {
  readonly at: Point;
  readonly on: number;
}

/** A place where the cable can leave one field for the next: on both rings and on the line that they share. */
export interface Crossing {
  readonly from: RingPlace;
  readonly line: Point;
  readonly to: RingPlace;
}

/**
 * Where the cable may cross from one field to the next, square to the line that they share: as far to either end as
 * both setbacks allow, or as near to that as keep-outs allow.
 */
export function crossings(one: Ringed, other: Ringed, passage: Passage, closest: number): Crossing[] {
  const side = one.field.sides[passage.fromSide]!;
  const along = direction(side.a, side.b);
  const on = one.ring.findIndex((s) => s.side === passage.fromSide);
  const nextOn = other.ring.findIndex((s) => s.side === passage.toSide);
  if (on < 0 || nextOn < 0) return [];
  const reach = ({ a, b }: RingSide) =>
    [a, b].map((p) => dot(subtract(p, side.a), along)).sort((p, q) => p - q) as [number, number];
  const spans = [reach(one.ring[on]!), reach(other.ring[nextOn]!)];
  const [low, high] = [Math.max(...spans.map((s) => s[0])), Math.min(...spans.map((s) => s[1]))];
  const project = (ringSide: RingSide, t: number): Point => {
    const p = dot(subtract(ringSide.a, side.a), along);
    return add(ringSide.a, scale(along, t - p));
  };
  const keepOuts = [one, other].flatMap(({ field }) =>
    field.keepOuts.flatMap((out) => keepOutCapsules(out, 0, closest)),
  );
  const at = (t: number): Crossing => ({
    from: { at: project(one.ring[on]!, t), on },
    line: add(side.a, scale(along, t)),
    to: { at: project(other.ring[nextOn]!, t), on: nextOn },
  });
  const clear = ({ from, line, to }: Crossing) =>
    keepOuts.every((capsule) => gapBetween(from.at, to.at, capsule) >= capsule.radius) &&
    keeps(one.field, passage.fromSide, [from.at, line]) &&
    keeps(other.field, passage.toSide, [line, to.at]);
  const tried = Array.from({ length: Math.max(0, Math.floor((high - low) / STEP)) + 1 }, (_, k) => k * STEP);
  const places = [tried.map((t) => low + t), tried.map((t) => high - t)].flatMap((ts) => {
    const found = ts
      .filter((t) => t >= low - 1e-9 && t <= high + 1e-9)
      .map(at)
      .find(clear);
    return found ? [found] : [];
  });
  return places.length === 2 && distance(places[0]!.line, places[1]!.line) < 1e-6 ? places.slice(1) : places;
}

/** How finely a place to cross at is looked for, in. */
const STEP = 0.25;

/** Whether places keep the setbacks of all sides but one. */
const keeps = ({ sides }: Field, but: number, places: readonly Point[]): boolean =>
  sides.every(
    ({ a, b, setback }, i) => i === but || places.every((p) => distanceToLine(p, a, b) >= setback - 1e-6),
  );
