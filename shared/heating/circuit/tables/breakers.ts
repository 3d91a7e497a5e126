import { amperes, type Amperes } from '../../../units/electrical.js';

/** Standard breakers, A, as far as an entry may need them. Source: NEC 240.6(A). */
const BREAKERS = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200] as const;

/** The next standard breaker that is no smaller; null past 200 A. */
export function nextBreaker(design: Amperes): Amperes | null {
  const size = BREAKERS.find((rating) => rating >= design - 1e-9);
  return size === undefined ? null : amperes(size);
}
