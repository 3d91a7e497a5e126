import { performance } from 'node:perf_hooks';

/** Milliseconds that one run takes. */
export function once(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

/** The middle of many runs, in milliseconds. */
export function medianOf(times: readonly number[]): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
}

/** Milliseconds to so many places. */
export function rounded(value: number, places = 2): number {
  return Math.round(value * 10 ** places) / 10 ** places;
}

/** The time that so large a share of many runs does not exceed, in milliseconds. */
export function quantileOf(times: readonly number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)] ?? 0;
}
