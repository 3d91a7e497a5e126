import type { Member } from './member.js';
import type { Random } from './random.js';

/** Far beyond any key: what is to come before or after everything else. */
const APART = 1e7;

/**
 * Keys with which a schedule is decoded again. From the other end they are the finishes seen from there: the child of two schedules
 * pushed to one end is pushed to the other, so that every pass is one of a justification too (Valls, Ballestín and Quintanilla 2005; two
 * populations: Debels and Vanhoucke 2005). From the same end they are the starts.
 *
 * @param into as many places as there are activities
 */
export function keysOf(member: Member, mirrored: boolean, durations: Int32Array, into: Float64Array): void {
  const { starts, end } = member;
  for (let i = 0; i < starts.length; i++) into[i] = mirrored ? end - starts[i]! - durations[i]! : starts[i]!;
}

/** The middle stretch of one parent's order, drawn at random, is put in the other's; its ends stay as they are. */
export function crossTwoPoints(outer: Float64Array, inner: Float64Array, end: number, random: Random): void {
  const a = random() * end;
  const b = random() * end;
  const low = Math.min(a, b);
  const high = Math.max(a, b);
  for (let i = 0; i < outer.length; i++) {
    const key = outer[i]!;
    outer[i] = key < low ? key - APART : key > high ? key + APART : inner[i]!;
  }
}

/**
 * A parent's busiest stretch is kept as a block, in its order; what the parent has before and after it is taken in the order of the other
 * parent (after Valls, Ballestín and Quintanilla 2008).
 *
 * @param keys of the parent that keeps its stretch; the child's afterwards
 */
export function crossBusyStretch(
  keys: Float64Array,
  other: Float64Array,
  parent: Member,
  window: { readonly from: number; readonly to: number },
  durations: Int32Array,
  mirrored: boolean,
): void {
  const sign = mirrored ? 1 : -1;
  for (let i = 0; i < keys.length; i++) {
    const start = parent.starts[i]!;
    const finish = start + durations[i]!;
    if (start < window.to && finish > window.from) continue;
    keys[i] = other[i]! + (start < window.from ? sign : -sign) * APART;
  }
}

/** The stretch of a given length in which a schedule has most to do. */
export function busiestStretch(
  parent: Member,
  length: number,
  durations: Int32Array,
  loads: Float64Array,
  scratch: Float64Array,
): { from: number; to: number } {
  const { starts, end } = parent;
  scratch.fill(0, 0, end + 1);
  for (let i = 0; i < starts.length; i++) {
    if (durations[i] === 0) continue;
    scratch[starts[i]!]! += loads[i]!;
    scratch[starts[i]! + durations[i]!]! -= loads[i]!;
  }
  for (let t = 1; t <= end; t++) scratch[t]! += scratch[t - 1]!;
  let load = 0;
  for (let t = 0; t < length; t++) load += scratch[t]!;
  let from = 0;
  let most = load;
  for (let t = 1; t + length <= end; t++) {
    load += scratch[t + length - 1]! - scratch[t - 1]!;
    if (load > most) {
      most = load;
      from = t;
    }
  }
  return { from, to: from + length };
}
