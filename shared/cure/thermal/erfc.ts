/**
 * Complementary error function for x ≥ 0 to about twelve digits: the series for small x, a continued fraction for large.
 */
export function erfc(x: number): number {
  if (x < 2) {
    let term = x;
    let sum = x;
    for (let n = 1; n < 60; n++) {
      term *= (-x * x) / n;
      sum += term / (2 * n + 1);
    }
    return 1 - (2 / Math.sqrt(Math.PI)) * sum;
  }
  let tail = 0;
  for (let n = 60; n >= 1; n--) tail = n / 2 / (x + tail);
  return Math.exp(-x * x) / Math.sqrt(Math.PI) / (x + tail);
}
