/** A stretch in pixels: of the rows from the top, or of the days from the left. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** What is drawn: a stretch of the rows and one of the days. */
export interface Window {
  readonly rows: Stretch;
  readonly days: Stretch;
}

/** Everything: nothing is left out. */
export const WHOLE: Window = {
  rows: { from: -Infinity, to: Infinity },
  days: { from: -Infinity, to: Infinity },
};

/** Steps in which the window moves, in pixels: drawing anew at every pixel of a scroll would be wasted. */
const STEP = 80;
/** What is drawn beyond what is in sight. */
const BEYOND = 40;

/** The stretch to draw around what is in sight; it stays the same object's worth of numbers within a step. */
export function stretchAround(scrolled: number, size: number): Stretch {
  const from = Math.floor((scrolled - BEYOND) / STEP) * STEP;
  return { from, to: from + Math.ceil((size + 2 * BEYOND) / STEP) * STEP + STEP };
}

/** Whether something that lies from `from` to `to` is at least partly in a stretch. */
export const within = (stretch: Stretch, from: number, to: number): boolean =>
  to > stretch.from && from < stretch.to;

export const sameWindow = (a: Window, b: Window): boolean =>
  a.rows.from === b.rows.from &&
  a.rows.to === b.rows.to &&
  a.days.from === b.days.from &&
  a.days.to === b.days.to;

/** Where rows of some heights begin, one under the other, and the height of all. */
export function stackRows(heights: readonly number[]): {
  readonly tops: readonly number[];
  readonly height: number;
} {
  const tops: number[] = [];
  let height = 0;
  for (const one of heights) {
    tops.push(height);
    height += one;
  }
  return { tops, height };
}
