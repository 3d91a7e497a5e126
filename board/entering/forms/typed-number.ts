const PARTS: Readonly<Record<string, number>> = {
  '¼': 0.25,
  '½': 0.5,
  '¾': 0.75,
  '⅛': 0.125,
  '⅜': 0.375,
  '⅝': 0.625,
  '⅞': 0.875,
};
const FORM = /^(-?)(\d*(?:[.,]\d+)?)\s*(?:(\d+)\/(\d+)|([¼½¾⅛⅜⅝⅞]))?$/;

/**
 * The number that a person typed: 7.5, 7,5, 7 1/2 or 7½, as a tape is read. Null for anything else, nothing at all
 * among it.
 */
export function typedNumber(text: string): number | null {
  const match = FORM.exec(text.trim());
  if (!match) return null;
  const [, sign = '', whole = '', over, under, part] = match;
  // "71/2" could be 7½ or 71 halves: a fraction stands alone or apart.
  if (over !== undefined && whole !== '' && !/\d\s+\d+\/\d+$/.test(text.trim())) return null;
  if (whole === '' && over === undefined && part === undefined) return null;
  const fraction = over === undefined ? (PARTS[part ?? ''] ?? 0) : Number(over) / Number(under);
  const value = Number(whole.replace(',', '.') || 0) + fraction;
  return Number.isFinite(value) ? (sign === '-' ? -value : value) : null;
}
