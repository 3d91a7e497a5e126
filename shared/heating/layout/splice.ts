import { cross, distance, dot, subtract, type Point } from '../../entry/geometry/point.js';

/**
 * Opens a line between two places on one of its straight stretches and leads it along `way` instead, whose first point
 * belongs to `p` and whose last to `q`; it is turned around when the line comes to `q` first. Null when no stretch holds both.
 */
export function splice(line: readonly Point[], p: Point, q: Point, way: readonly Point[]): Point[] | null {
  for (let i = 0; i + 1 < line.length; i++) {
    const [a, b] = [line[i]!, line[i + 1]!];
    if (!holds(a, b, p) || !holds(a, b, q)) continue;
    const pFirst = distance(a, p) <= distance(a, q);
    const inserted = pFirst ? [p, ...way, q] : [q, ...[...way].reverse(), p];
    return [...line.slice(0, i + 1), ...inserted, ...line.slice(i + 1)];
  }
  return null;
}

const HAIR = 1e-5;

function holds(a: Point, b: Point, p: Point): boolean {
  const length = distance(a, b);
  if (length < HAIR) return false;
  const along = dot(subtract(p, a), subtract(b, a)) / length;
  return (
    along > -HAIR && along < length + HAIR && Math.abs(cross(subtract(b, a), subtract(p, a))) / length < HAIR
  );
}

/** Without points that repeat their neighbour or lie on the straight line between both. */
export function straightened(line: readonly Point[]): Point[] {
  const out: Point[] = [];
  for (const p of line) {
    if (out.length > 0 && distance(out[out.length - 1]!, p) < HAIR) continue;
    while (out.length >= 2) {
      const [a, b] = [out[out.length - 2]!, out[out.length - 1]!];
      const [u, v] = [subtract(b, a), subtract(p, b)];
      if (Math.abs(cross(u, v)) > HAIR * Math.hypot(v.x, v.y) || dot(u, v) < 0) break;
      out.pop();
    }
    out.push(p);
  }
  return out;
}
