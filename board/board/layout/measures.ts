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
