import { direction, subtract, dot } from '../../entry/geometry/point.js';
import type { LayoutCable } from './cable.js';
import type { FieldChain } from './field.js';
import { rounded } from './fillet.js';
import { fieldLine, type LaidField } from './lay-field.js';
import type { Piece, Place } from './path.js';
import { apart } from './place.js';

/** Bends at single corners are no wider than this, in, so that they stay inside the setbacks. */
const USUAL_BEND = 1.5;

/** A stretch between two runs is no longer than so many spacings. */
const TURN_STRETCH = 1.6;

/** The whole path through laid fields, from the cold joint to the end of the cable, with every corner rounded. */
export function pathOf(
  chain: FieldChain,
  laid: readonly LaidField[],
  pullBacks: readonly number[],
  cable: LayoutCable,
  spacing: number,
): Piece[] {
  const line: Place[] = [];
  chain.fields.forEach((field, i) => {
    const points = fieldLine(laid[i]!, pullBacks[i]!);
    const passage = chain.passages[i];
    // What lies on the shared line belongs to the passage.
    const own = points.slice(i > 0 ? 1 : 0, passage ? -1 : undefined);
    line.push(...own.map((p) => ({ ...p, z: field.level })));
    if (!passage || passage.chamfer === 0) return;
    const edge = points[points.length - 1]!;
    const out = direction(own[own.length - 1]!, edge);
    const c = passage.chamfer;
    line.push(
      { x: edge.x - out.x * c, y: edge.y - out.y * c, z: field.level },
      { ...edge, z: field.level - c },
      { ...edge, z: chain.fields[i + 1]!.level },
    );
  });
  const turn = Math.max(cable.leastBend, USUAL_BEND);
  // Only between two runs a bend may be as wide as it can: there it makes a half circle.
  return rounded(withoutStraight(line), (stretch) => (stretch < TURN_STRETCH * spacing ? Infinity : turn));
}

function withoutStraight(line: readonly Place[]): Place[] {
  return line.filter((p, i) => {
    const [a, b] = [line[i - 1], line[i + 1]];
    if (!a || !b || a.z !== p.z || b.z !== p.z) return true;
    const [u, v] = [subtract(p, a), subtract(b, p)];
    return (
      Math.abs(u.x * v.y - u.y * v.x) > 1e-6 * Math.hypot(u.x, u.y) * Math.hypot(v.x, v.y) || dot(u, v) < 0
    );
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
