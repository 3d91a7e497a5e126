/** Optimistic, most likely and pessimistic duration, in any one unit. */
export interface ThreePoint {
  readonly optimistic: number;
  readonly likely: number;
  readonly pessimistic: number;
}

/** Expected duration by the classical weights 1, 4, 1. */
export function expectedDuration({ optimistic, likely, pessimistic }: ThreePoint): number {
  return (optimistic + 4 * likely + pessimistic) / 6;
}

/** Variance by the classical rule that six standard deviations span the range. */
export function durationVariance({ optimistic, pessimistic }: ThreePoint): number {
  return ((pessimistic - optimistic) / 6) ** 2;
}

/**
 * Probability that a chain of independent durations is done by `deadline`, its sum taken as normal. It looks at one chain only, so it
 * flatters a network in which another chain is nearly as long.
 */
export function chanceBy(deadline: number, chain: readonly ThreePoint[]): number {
  const mean = chain.reduce((sum, estimate) => sum + expectedDuration(estimate), 0);
  const variance = chain.reduce((sum, estimate) => sum + durationVariance(estimate), 0);
  if (variance === 0) return deadline >= mean ? 1 : 0;
  return normalBelow((deadline - mean) / Math.sqrt(variance));
}

/** Share of a standard normal distribution below `z`; absolute error under 1e-12. */
export function normalBelow(z: number): number {
  const x = Math.abs(z);
  if (x > 8.5) return z > 0 ? 1 : 0;
  return z >= 0 ? 1 - upperTail(x) : upperTail(x);
}

/** A power series near the middle, a continued fraction in the tail: both standard forms of the normal integral. */
function upperTail(x: number): number {
  const density = Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
  if (x < 3) {
    let term = x;
    let sum = x;
    for (let n = 3; term > 1e-17 * sum; n += 2) {
      term *= (x * x) / n;
      sum += term;
    }
    return 0.5 - density * sum;
  }
  let fraction = x;
  for (let n = 80; n >= 1; n--) fraction = x + n / fraction;
  return density / fraction;
}
