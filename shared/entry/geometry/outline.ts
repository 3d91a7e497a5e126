import { cross, distance, subtract, type Point } from './point.js';

/** Corners of a closed outline in turn; the last one joins the first. */
export type Outline = readonly Point[];

/** Area inside an outline, in²; positive when its corners turn x into y. */
export const signedArea = (outline: Outline): number =>
  sides(outline).reduce((sum, [a, b]) => sum + cross(a, b), 0) / 2;

/** The sides of an outline: side i runs from corner i to the next. */
export const sides = (outline: Outline): (readonly [Point, Point])[] =>
  outline.map((corner, i) => [corner, outline[(i + 1) % outline.length]!] as const);

/** Whether a place is inside an outline, by counting the sides that a line to the right crosses. */
export function inside(outline: Outline, p: Point): boolean {
  let within = false;
  for (const [a, b] of sides(outline)) {
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) within = !within;
  }
  return within;
}

/** Whether two lines cross or touch. */
export function touch(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) => Math.sign(cross(subtract(q, p), subtract(r, p)));
  const on = (p: Point, q: Point, r: Point) =>
    side(p, q, r) === 0 && Math.abs(distance(p, r) + distance(r, q) - distance(p, q)) < 1e-9;
  if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) return true;
  return on(a, b, c) || on(a, b, d) || on(c, d, a) || on(c, d, b);
}

/** Whether no two sides of an outline meet but at the corners that they share. */
export function isSimple(outline: Outline): boolean {
  const all = sides(outline);
  return all.every(([a, b], i) =>
    all.every(([c, d], j) => {
      const apart = Math.min((j - i + all.length) % all.length, (i - j + all.length) % all.length);
      return apart <= 1 || !touch(a, b, c, d);
    }),
  );
}
