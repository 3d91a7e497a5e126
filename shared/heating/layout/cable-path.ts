import { cross, direction, distanceToLine, dot, subtract, type Point } from '../../entry/geometry/point.js';
import type { LayoutCable } from './cable.js';
import type { FieldChain } from './field.js';
import { rounded } from './fillet.js';
import type { Arc, Piece, Place } from './path.js';
import { apart } from './place.js';
import { keepOutCapsules } from './zone.js';

/** Bends at single corners are no wider than this, in, so that they stay inside the setbacks. */
const USUAL_BEND = 1.5;

/**
 * The whole path along the corners of each field's line and over the places between fields, from the cold joint to the
 * end of the cable, with every corner rounded. Runs go back beside each other within `widest`, in.
 */
export function pathOf(
  chain: FieldChain,
  lines: readonly (readonly Point[])[],
  between: readonly Point[],
  cable: LayoutCable,
  widest: number,
): Piece[] {
  const line: Place[] = [];
  chain.fields.forEach(({ level }, i) => {
    const own = lines[i]!;
    line.push(...own.map((p) => ({ ...p, z: level })));
    const passage = chain.passages[i];
    if (!passage || passage.chamfer === 0) return;
    const edge = between[i]!;
    const out = direction(own[own.length - 1]!, edge);
    const c = passage.chamfer;
    line.push(
      { x: edge.x - out.x * c, y: edge.y - out.y * c, z: level },
      { ...edge, z: level - c },
      { ...edge, z: chain.fields[i + 1]!.level },
    );
  });
  const corners = withoutStraight(line);
  const turn = Math.max(cable.leastBend, USUAL_BEND);
  const back = corners.map((_, i) => goesBack(corners, i, 1.6 * widest));
  // Only where a run goes back beside itself a bend may be as wide as it can: there it makes a half circle.
  const widestAt = (i: number) => (back[i] || back[i - 1] ? Infinity : turn);
  return rounded(corners, widestAt, clearOf(chain), turn);
}

/** Whether a bend stays out of what posts and drains of its level hold free. */
function clearOf({ fields }: FieldChain): (arc: Arc) => boolean {
  const kept = fields.flatMap(({ level, keepOuts }) =>
    keepOuts.flatMap((out) => keepOutCapsules(out, 0, 0).map((capsule) => ({ level, capsule }))),
  );
  return (arc) =>
    kept.every(
      ({ level, capsule: { a, b, radius } }) =>
        Math.abs(arc.from.z - level) > 1e-6 ||
        Array.from({ length: STEPS + 1 }, (_, i) => onArc(arc, (arc.angle * i) / STEPS)).every(
          (p) => distanceToLine(p, a, b) >= radius,
        ),
    );
}

/** A bend is looked at in so many places. */
const STEPS = 12;

/** Whether the line turns at corner i and at the next one, so that it goes back beside itself. */
function goesBack(line: readonly Place[], i: number, within: number): boolean {
  const [a, b, c, d] = [line[i - 1], line[i], line[i + 1], line[i + 2]];
  if (!a || !b || !c || !d || apart(b, c) > within || a.z !== d.z || b.z !== c.z) return false;
  const [into, on, out] = [subtract(b, a), subtract(c, b), subtract(d, c)];
  return (
    cross(into, on) * cross(on, out) > 0 &&
    dot(into, out) < -0.8 * Math.hypot(into.x, into.y) * Math.hypot(out.x, out.y)
  );
}

function withoutStraight(line: readonly Place[]): Place[] {
  return line.filter((p, i) => {
    const [a, b] = [line[i - 1], line[i + 1]];
    if (!a || !b || a.z !== p.z || b.z !== p.z) return true;
    const [u, v] = [subtract(p, a), subtract(b, p)];
    return Math.abs(cross(u, v)) > 1e-6 * Math.hypot(u.x, u.y) * Math.hypot(v.x, v.y) || dot(u, v) < 0;
  });
}

/** Length of a piece, in. */
export const pieceLength = (piece: Piece): number =>
  piece.kind === 'straight' ? apart(piece.from, piece.to) : piece.radius * piece.angle;

/** Length of a path, in. */
export const pathLength = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, piece) => sum + pieceLength(piece), 0);

/** The path without its last `excess` inches. */
export function cutToLength(pieces: readonly Piece[], excess: number): Piece[] {
  const out = [...pieces];
  let rest = excess;
  while (out.length > 0 && rest > 1e-9) {
    const last = out.pop()!;
    const length = pieceLength(last);
    if (length <= rest) {
      rest -= length;
      continue;
    }
    out.push(firstPart(last, (length - rest) / length));
    rest = 0;
  }
  return out;
}

/** The first part of a piece. */
function firstPart(piece: Piece, part: number): Piece {
  if (piece.kind === 'straight') {
    const { from, to } = piece;
    const at = (a: number, b: number) => a + (b - a) * part;
    return { kind: 'straight', from, to: { x: at(from.x, to.x), y: at(from.y, to.y), z: at(from.z, to.z) } };
  }
  const angle = piece.angle * part;
  return { ...piece, angle, to: onArc(piece, angle) };
}

/** The place on a bend after turning by `angle`, rad. */
export function onArc(
  { centre, radius, into, towards }: Extract<Piece, { kind: 'bend' }>,
  angle: number,
): Place {
  const [s, c] = [Math.sin(angle) * radius, Math.cos(angle) * radius];
  return {
    x: centre.x + into.x * s - towards.x * c,
    y: centre.y + into.y * s - towards.y * c,
    z: centre.z + into.z * s - towards.z * c,
  };
}
