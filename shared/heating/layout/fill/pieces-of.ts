import type { Point } from '../../../entry/geometry/point.js';
import { rounded } from '../fillet.js';
import type { Piece } from '../path.js';
import type { FieldWay } from './field-way.js';

/** The pieces of a line in one field, on the level, with what of them lies on the way in and out. */
export function piecesOf({ from, to }: FieldWay, line: readonly Point[], gap: number): Piece[] {
  const [before, after] = [from, to].map(({ beyond, goesOn }) => (beyond && goesOn ? [beyond] : []));
  const whole = [...before!, ...line, ...after!];
  return rounded(
    whole.map((p) => ({ ...p, z: 0 })),
    () => gap / 2,
  );
}
