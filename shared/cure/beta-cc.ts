import type { Days } from '../units/time.js';

/** EN 1992-1-1 β_cc(t): strength at an age of `t` days over that at 28 days; s by the cement's class. */
export const betaCc = (age: Days, s: number): number => Math.exp(s * (1 - Math.sqrt(28 / age)));
