/** A place on the plan, in inches: `x` to the right as one faces the house, `y` out from its wall. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
export const subtract = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const scale = (a: Point, by: number): Point => ({ x: a.x * by, y: a.y * by });
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
/** Positive when `b` turns from `a` the way x turns into y. */
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
export const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
/** The direction from `a` to `b`, of length 1. */
export const direction = (a: Point, b: Point): Point => scale(subtract(b, a), 1 / distance(a, b));
/** A quarter turn, x into y. */
export const quarterTurn = (a: Point): Point => ({ x: -a.y, y: a.x });
/** The place a part of the way from `a` to `b`: 0 is `a`, 1 is `b`. */
export const between = (a: Point, b: Point, part: number): Point => add(a, scale(subtract(b, a), part));

/** Turned about the origin by an angle in radians. */
export function turned(a: Point, angle: number): Point {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { x: a.x * c - a.y * s, y: a.x * s + a.y * c };
}

/** How far a place is from the nearest point of a line from `a` to `b`, in. */
export function distanceToLine(p: Point, a: Point, b: Point): number {
  const along = subtract(b, a);
  const length = dot(along, along);
  const part = length === 0 ? 0 : Math.min(1, Math.max(0, dot(subtract(p, a), along) / length));
  return distance(p, between(a, b, part));
}
