import type { Piece, Place } from '../path.js';
import { along, apart, dot3, plus, times } from '../place.js';

/** The tightest bend of a path, in; a break in direction between two pieces is a bend of radius 0. Infinite when straight. */
export function tightestBend(pieces: readonly Piece[]): number {
  let least = Infinity;
  pieces.forEach((piece, i) => {
    if (piece.kind === 'bend') least = Math.min(least, apart(piece.from, piece.centre));
    const next = pieces[i + 1];
    if (!next) return;
    if (apart(piece.to, next.from) > 1e-6 || dot3(leaving(piece), entering(next)) < 1 - 1e-6) least = 0;
  });
  return least;
}

const entering = (piece: Piece): Place =>
  piece.kind === 'straight' ? along(piece.from, piece.to) : piece.into;

const leaving = (piece: Piece): Place =>
  piece.kind === 'straight'
    ? along(piece.from, piece.to)
    : plus(times(piece.into, Math.cos(piece.angle)), times(piece.towards, Math.sin(piece.angle)));
