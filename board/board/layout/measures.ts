import type { RowsBy } from './rows.js';

/** Heights and widths of the drawing, in pixels; the style sheet draws what these lay out. */
export const MEASURES = {
  /** Above a bar: the marks of its hold points. */
  gateBand: 12,
  barHeight: 20,
  /** Below a bar: the rule of committed dates. */
  ruleBand: 5,
  rowPadding: 3,
  leastRow: 44,
  /** Least size of what can be pressed (WCAG 2.2, 2.5.8 Target Size). */
  leastTarget: 24,
  between: 3,
} as const;

/** Height of one lane. */
export const LANE = MEASURES.gateBand + MEASURES.barHeight + MEASURES.ruleBand;

/** Height of the heads of the days. */
export const DAYS_HEAD = 40;

/** Least height of a row, so that what its head says has room: a job says more, and on a phone in narrower lines. */
export function leastRowOf(by: RowsBy, narrow: boolean, weathered: boolean): number {
  if (by === 'crew') return MEASURES.leastRow;
  return narrow ? 152 : weathered ? 112 : 96;
}
