import { epochMs, type EpochMs } from '../units/time.js';

/** A stretch of time from `from` up to but not including `to`. */
export interface Stretch {
  readonly from: EpochMs;
  readonly to: EpochMs;
}

/** The part of a stretch inside another; nothing when they only touch. */
export function clip(stretch: Stretch, inside: Stretch): Stretch[] {
  const from = epochMs(Math.max(stretch.from, inside.from));
  const to = epochMs(Math.min(stretch.to, inside.to));
  return from < to ? [{ from, to }] : [];
}

/** The same time in order and without overlaps; stretches that touch become one. */
export function merge(stretches: readonly Stretch[]): Stretch[] {
  const merged: { from: EpochMs; to: EpochMs }[] = [];
  for (const stretch of [...stretches].sort((a, b) => a.from - b.from || a.to - b.to)) {
    const open = merged.at(-1);
    if (open && stretch.from <= open.to) open.to = epochMs(Math.max(open.to, stretch.to));
    else merged.push({ ...stretch });
  }
  return merged;
}

/** The time of `stretches` that lies in none of `taken`; both merged. */
export function subtract(stretches: readonly Stretch[], taken: readonly Stretch[]): Stretch[] {
  return stretches.flatMap((stretch) => {
    const left: Stretch[] = [];
    let { from } = stretch;
    for (const other of taken) {
      if (other.to <= from || other.from >= stretch.to) continue;
      if (other.from > from) left.push({ from, to: other.from });
      from = other.to;
    }
    return from < stretch.to ? [...left, { from, to: stretch.to }] : left;
  });
}
