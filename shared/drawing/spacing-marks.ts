import { distance, type Point } from '../entry/geometry/point.js';
import type { Straight, Piece } from '../heating/layout/path.js';
import { dimension } from './dimension.js';

/** Where to hold the tape: two neighbouring runs of a field and the distance between their middles. */
export interface SpacingMark {
  readonly a: Point;
  readonly b: Point;
}

/** Runs shorter than this are not measured at, in. */
const LEAST_RUN = 12;

/** For each height of the cable the places where neighbouring long runs lie closest and farthest, first found of each. */
export function spacingMarks(pieces: readonly Piece[], greatest: number): SpacingMark[] {
  const runs = pieces.filter(
    (piece): piece is Straight =>
      piece.kind === 'straight' && piece.from.z === piece.to.z && distance(piece.from, piece.to) >= LEAST_RUN,
  );
  const byField = new Map<string, SpacingMark[]>();
  runs.slice(1).forEach((run, i) => {
    const before = runs[i]!;
    const mark = acrossRuns(before, run, greatest);
    if (!mark || before.from.z !== run.from.z) return;
    const key = `${run.from.z} ${Math.round(headingOf(run) * 100)}`;
    byField.set(key, [...(byField.get(key) ?? []), mark]);
  });
  return [...byField.values()].flatMap((marks) => {
    const sorted = [...marks].sort((p, q) => distance(p.a, p.b) - distance(q.a, q.b));
    const [least, most] = [sorted[0]!, sorted[sorted.length - 1]!];
    return distance(most.a, most.b) - distance(least.a, least.b) > 0.06 ? [least, most] : [least];
  });
}

const headingOf = ({ from, to }: Straight): number => {
  const angle = Math.atan2(to.y - from.y, to.x - from.x);
  return angle < 0 ? angle + Math.PI : angle >= Math.PI - 1e-9 ? angle - Math.PI : angle;
};

/** Square across from the middle of one run to the next, when it lies beside it. */
function acrossRuns(one: Straight, other: Straight, greatest: number): SpacingMark | null {
  const [ux, uy] = [other.to.x - other.from.x, other.to.y - other.from.y];
  const length = Math.hypot(ux, uy);
  const [vx, vy] = [one.to.x - one.from.x, one.to.y - one.from.y];
  if (Math.abs(ux * vy - uy * vx) > 1e-3 * length * Math.hypot(vx, vy)) return null;
  const a = { x: (one.from.x + one.to.x) / 2, y: (one.from.y + one.to.y) / 2 };
  const part = ((a.x - other.from.x) * ux + (a.y - other.from.y) * uy) / length ** 2;
  if (part < 0 || part > 1) return null;
  const b = { x: other.from.x + ux * part, y: other.from.y + uy * part };
  return distance(a, b) > greatest || distance(a, b) < 0.5 ? null : { a, b };
}

/** A spacing mark on the plan. */
export const drawMark = ({ a, b }: SpacingMark, size: number): string => dimension(a, b, 0.01, size);
