import { seededWords } from '../../shared/schedule/improve/random.js';

/** Whole numbers below a given one, so that every run measures the same. */
export function seeded(seed: number): (below: number) => number {
  const next = seededWords(seed);
  return (below) => next() % below;
}
