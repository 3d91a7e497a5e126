/**
 * Recognises a decimal point lost or a unit mixed up: when the value divided by 10 (or, for lengths, times or
 * over 12) would fit, asks whether that was meant. Gives nothing when no guess fits.
 */
export function guessSlip(value: number, min: number, max: number): string | undefined {
  for (const factor of [1 / 10, 1 / 12, 12, 10, 1 / 100]) {
    const guess = Math.round(value * factor * 1000) / 1000;
    if (guess >= min && guess <= max) return `did you mean ${guess}?`;
  }
  return undefined;
}
