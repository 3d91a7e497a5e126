/** How many days the board can show side by side, from a day to a year, with their names. */
export const SPANS = [
  { days: 1, name: 'a day' },
  { days: 3, name: '3 days' },
  { days: 7, name: 'a week' },
  { days: 14, name: '2 weeks' },
  { days: 28, name: '4 weeks' },
  { days: 56, name: '8 weeks' },
  { days: 91, name: 'a season' },
  { days: 182, name: 'half a year' },
  { days: 364, name: 'a year' },
] as const;

export type Span = (typeof SPANS)[number]['days'];

/** The span on a desk and on a phone when the address names none. */
export const usualSpan = (narrow: boolean): Span => (narrow ? 7 : 14);

/** The span that a number in an address means; null when it means none. */
export const spanOf = (text: string | null): Span | null =>
  SPANS.find(({ days }) => String(days) === text)?.days ?? null;

/** The next span closer (1) or wider (-1); the same at the ends. */
export function zoomed(span: Span, direction: 1 | -1): Span {
  const at = SPANS.findIndex(({ days }) => days === span);
  return SPANS[Math.min(Math.max(at - direction, 0), SPANS.length - 1)]?.days ?? span;
}

export const spanName = (span: Span): string => SPANS.find(({ days }) => days === span)?.name ?? '';
