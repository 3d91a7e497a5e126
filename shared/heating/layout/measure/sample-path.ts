import { onArc, pieceLength } from '../cable-path.js';
import type { Piece, Place } from '../path.js';

/** Places along a path: where each is, in, and how far along the cable, in. */
export interface Samples {
  readonly count: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  readonly along: Float64Array;
}

/** Places along a path, no farther apart than `pitch` and with every end of a piece among them. */
export function samplePath(pieces: readonly Piece[], pitch: number): Samples {
  const parts = pieces.map((piece) => Math.max(1, Math.ceil(pieceLength(piece) / pitch)));
  const count = parts.reduce((sum, n) => sum + n, 1);
  const [x, y, z, along] = [0, 1, 2, 3].map(() => new Float64Array(count)) as [
    Float64Array,
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  let i = 0;
  const put = (at: Place, how: number): void => {
    x[i] = at.x;
    y[i] = at.y;
    z[i] = at.z;
    along[i++] = how;
  };
  let gone = 0;
  if (pieces[0]) put(pieces[0].from, 0);
  pieces.forEach((piece, p) => {
    const length = pieceLength(piece);
    const n = parts[p]!;
    for (let k = 1; k <= n; k++) put(placeOn(piece, k / n), gone + (length * k) / n);
    gone += length;
  });
  return { count: i, x, y, z, along };
}

function placeOn(piece: Piece, part: number): Place {
  if (piece.kind === 'bend') return onArc(piece, piece.angle * part);
  const { from, to } = piece;
  const at = (a: number, b: number) => a + (b - a) * part;
  return { x: at(from.x, to.x), y: at(from.y, to.y), z: at(from.z, to.z) };
}
