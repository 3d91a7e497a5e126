import type { Place } from './path.js';
import { along, apart, dot3, minus, plus, times } from './place.js';
import type { Arc, Piece } from './path.js';

/** A corner of a line in space, with the way in and out of it. */
interface Corner {
  readonly at: Place;
  readonly into: Place;
  readonly out: Place;
  readonly angle: number;
  /** Tangent length of a bend of radius 1. */
  readonly tangent: number;
}

/** A bend in the way of something is tried again so much tighter. */
const TIGHTER = 0.9;

/** Corners that turn by less than this are none, rad. */
const STRAIGHT = 1e-6;

/**
 * A line with corners, rounded: every corner gets the largest bend for which its two stretches have room, halves shared with
 * the corners beside it so that two corners of a half turn become one half circle, up to `widest(number of the corner)`. One that
 * cuts into what the cable keeps away from is made tighter, down to `tightest`.
 */
export function rounded(
  line: readonly Place[],
  widest: (corner: number) => number,
  isClear: (arc: Arc) => boolean = () => true,
  tightest = 0,
): Piece[] {
  const corners = line.map((at, i) => cornerAt(line, i, at));
  const lengths = line.slice(1).map((b, i) => apart(line[i]!, b));
  const shares = lengths.map((length, i) => {
    const sum = corners[i]!.tangent + corners[i + 1]!.tangent;
    return sum === 0 ? Infinity : length / sum;
  });
  const pieces: Piece[] = [];
  let from = line[0]!;
  for (let i = 1; i + 1 < line.length; i++) {
    const corner = corners[i]!;
    if (corner.tangent === 0) continue;
    let radius = Math.min(shares[i - 1]!, shares[i]!, widest(i));
    let arc = bend(corner, radius);
    while (radius > tightest && !isClear(arc)) {
      radius = Math.max(tightest, radius * TIGHTER);
      arc = bend(corner, radius);
    }
    const start = plus(corner.at, times(corner.into, -radius * corner.tangent));
    if (apart(from, start) > 1e-9) pieces.push({ kind: 'straight', from, to: start });
    pieces.push(arc);
    from = arc.to;
  }
  const last = line[line.length - 1]!;
  if (apart(from, last) > 1e-9) pieces.push({ kind: 'straight', from, to: last });
  return pieces;
}

function cornerAt(line: readonly Place[], i: number, at: Place): Corner {
  const before = line[i - 1];
  const after = line[i + 1];
  if (!before || !after) return { at, into: at, out: at, angle: 0, tangent: 0 };
  const [into, out] = [along(before, at), along(at, after)];
  const angle = Math.acos(Math.max(-1, Math.min(1, dot3(into, out))));
  return { at, into, out, angle, tangent: angle < STRAIGHT ? 0 : Math.tan(angle / 2) };
}

function bend({ at, into, out, angle, tangent }: Corner, radius: number): Arc {
  const start = plus(at, times(into, -radius * tangent));
  const end = plus(at, times(out, radius * tangent));
  // Square to the way in, towards where the bend turns.
  const side = minus(out, times(into, dot3(into, out)));
  const towards = times(side, 1 / Math.sqrt(dot3(side, side)));
  return {
    kind: 'bend',
    from: start,
    to: end,
    centre: plus(start, times(towards, radius)),
    radius,
    angle,
    into,
    towards,
  };
}
