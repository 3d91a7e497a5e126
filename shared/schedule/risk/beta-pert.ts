import type { ThreePoint } from '../three-point.js';

const STEPS = 512;

/**
 * Quantiles of the beta distribution of a three-point estimate: shape 1 + 4(m − a)/(b − a) and 1 + 4(b − m)/(b − a), so that its mean is the
 * classical (a + 4m + b)/6 (Malcolm, Roseboom, Clark and Fazar 1959; Vose 2008 for the shape). Its variance is (μ − a)(b − μ)/7, of which the
 * classical ((b − a)/6)² is the usual round figure.
 */
export class BetaPert {
  private readonly below: Float64Array | null;

  /** @throws RangeError when the three points are not in order */
  constructor(private readonly estimate: ThreePoint) {
    const { optimistic: a, likely: m, pessimistic: b } = estimate;
    if (!(a <= m && m <= b)) {
      throw new RangeError(
        `A three-point estimate goes from optimistic over likely to pessimistic, not ${a}, ${m}, ${b}.`,
      );
    }
    this.below = a === b ? null : cumulative((4 * (m - a)) / (b - a), (4 * (b - m)) / (b - a));
  }

  /** The duration that a share `u` of all stays below. */
  quantile(u: number): number {
    const { optimistic: a, pessimistic: b } = this.estimate;
    const { below } = this;
    if (!below) return a;
    let low = 0;
    let high = STEPS;
    while (high - low > 1) {
      const middle = (low + high) >>> 1;
      if (below[middle]! <= u) low = middle;
      else high = middle;
    }
    const part = (u - below[low]!) / (below[high]! - below[low]!);
    return a + ((b - a) * (low + Math.min(1, Math.max(0, part)))) / STEPS;
  }
}

/** Share below each step, from the density xᵖ(1 − x)ᑫ by Simpson's rule. */
function cumulative(p: number, q: number): Float64Array {
  const density = (x: number): number => x ** p * (1 - x) ** q;
  const below = new Float64Array(STEPS + 1);
  for (let i = 1; i <= STEPS; i++) {
    const from = (i - 1) / STEPS;
    const to = i / STEPS;
    below[i] = below[i - 1]! + density(from) + 4 * density((from + to) / 2) + density(to);
  }
  const all = below[STEPS]!;
  return below.map((share) => share / all);
}
