import type { Interval } from './model.js';

/** Sorts, drops empty stretches, and joins those that touch or overlap. */
export function mergeIntervals(intervals: readonly Interval[]): Interval[] {
  const sorted = intervals.filter((i) => i.to > i.from).sort((a, b) => a.from - b.from || a.to - b.to);
  const merged: Interval[] = [];
  for (const next of sorted) {
    const last = merged[merged.length - 1];
    if (last && next.from <= last.to) {
      if (next.to > last.to) merged[merged.length - 1] = { from: last.from, to: next.to };
    } else {
      merged.push({ from: next.from, to: next.to });
    }
  }
  return merged;
}

/** What is left of merged `base` outside merged `holes`; merged again. */
export function subtractIntervals(base: readonly Interval[], holes: readonly Interval[]): Interval[] {
  const left: Interval[] = [];
  let h = 0;
  for (const stretch of base) {
    let from = stretch.from;
    while (h < holes.length && holes[h]!.to <= from) h++;
    for (let i = h; i < holes.length && holes[i]!.from < stretch.to; i++) {
      const hole = holes[i]!;
      if (hole.from > from) left.push({ from, to: hole.from });
      from = hole.to;
    }
    if (from === stretch.from) left.push(stretch);
    else if (from < stretch.to) left.push({ from, to: stretch.to });
  }
  return left;
}
