const FRACTIONS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

/** A length as a tape shows it, to the eighth: 7¼ in, or 11 ft 0 in from ten feet on. */
export function sayInches(inches: number): string {
  const eighths = Math.round(Math.abs(inches) * 8);
  const sign = inches < 0 && eighths > 0 ? '−' : '';
  const feet = eighths >= 960 ? Math.floor(eighths / 96) : 0;
  const rest = eighths - feet * 96;
  const whole = Math.floor(rest / 8);
  const part = FRACTIONS[rest % 8]!;
  const small = whole === 0 && part !== '' && feet === 0 ? part : `${whole}${part}`;
  return feet > 0 ? `${sign}${feet} ft ${small} in` : `${sign}${small} in`;
}
