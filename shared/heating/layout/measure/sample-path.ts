import { onArc, pieceLength } from '../cable-path.js';
import type { Piece, Place } from '../path.js';

/** A place on the path and how far along the cable it is, in. */
export interface Sample {
  readonly at: Place;
  readonly along: number;
}

/** Places along a path, no farther apart than `pitch` and with every end of a piece among them. */
export function samplePath(pieces: readonly Piece[], pitch: number): Sample[] {
  const out: Sample[] = [];
  let along = 0;
  for (const piece of pieces) {
    const length = pieceLength(piece);
    const parts = Math.max(1, Math.ceil(length / pitch));
    if (out.length === 0) out.push({ at: piece.from, along: 0 });
    for (let k = 1; k <= parts; k++) {
      out.push({ at: placeOn(piece, k / parts), along: along + (length * k) / parts });
    }
    along += length;
  }
  return out;
}

function placeOn(piece: Piece, part: number): Place {
  if (piece.kind === 'bend') return onArc(piece, piece.angle * part);
  const { from, to } = piece;
  const at = (a: number, b: number) => a + (b - a) * part;
  return { x: at(from.x, to.x), y: at(from.y, to.y), z: at(from.z, to.z) };
}
