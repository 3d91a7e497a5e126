import type { Piece, Place } from '../../../shared/heating/layout/path.js';

/** A bend is cut into chords that turn by no more than this, rad; a straight stretch into parts no longer than this, in. */
const CHORD = Math.PI / 22.5;
const PART = 3;

/** A path as corners of straight lines, from the pieces themselves. */
export function polyline(pieces: readonly Piece[]): Place[] {
  const out: Place[] = pieces.length > 0 ? [pieces[0]!.from] : [];
  for (const piece of pieces) {
    if (piece.kind === 'straight') {
      const { from, to } = piece;
      const length = Math.hypot(to.x - from.x, to.y - from.y, to.z - from.z);
      const parts = Math.ceil(length / PART);
      for (let k = 1; k <= parts; k++) {
        const at = (a: number, b: number) => a + ((b - a) * k) / parts;
        out.push({ x: at(from.x, to.x), y: at(from.y, to.y), z: at(from.z, to.z) });
      }
    } else {
      const { centre, radius, angle, into, towards } = piece;
      const parts = Math.ceil(angle / CHORD);
      for (let k = 1; k <= parts; k++) {
        const [s, c] = [radius * Math.sin((angle * k) / parts), radius * Math.cos((angle * k) / parts)];
        const at = (m: number, u: number, v: number) => m + u * s - v * c;
        out.push({
          x: at(centre.x, into.x, towards.x),
          y: at(centre.y, into.y, towards.y),
          z: at(centre.z, into.z, towards.z),
        });
      }
    }
  }
  return out;
}

/** The largest turn of a polyline of bends, rad, at no more than one chord a corner. */
export const LARGEST_TURN = CHORD * 1.05;

/** The parts of a polyline whose places are all among those asked for, each in one go. */
export function stretches(points: readonly Place[], asked: (p: Place) => boolean): Place[][] {
  const out: Place[][] = [[]];
  for (const p of points) {
    const last = out[out.length - 1]!;
    if (asked(p)) last.push(p);
    else if (last.length > 0) out.push([]);
  }
  return out.filter((stretch) => stretch.length > 1);
}
