import { days, type Days } from '../units/time.js';

/** Cements by the speed of their strength, as EN 197-1 names their classes. */
export type CementClass = '32.5N' | '32.5R' | '42.5N' | '42.5R' | '52.5N' | '52.5R';

const S_BY_CLASS: Readonly<Record<CementClass, number>> = {
  '32.5N': 0.38,
  '32.5R': 0.25,
  '42.5N': 0.25,
  '42.5R': 0.2,
  '52.5N': 0.2,
  '52.5R': 0.2,
};

/** EN 1992-1-1 β_cc(t): strength at an age of `t` days over that at 28 days; s by the cement's class. */
export const betaCc = (age: Days, s: number): number =>
  age <= 0 ? 0 : Math.exp(s * (1 - Math.sqrt(28 / age)));

/** fib Model Code 2010: s by the cement's class; 0.20 for every class above a mean strength of 60 MPa. */
export const modelCodeS = (cement: CementClass, meanStrength: number): number =>
  meanStrength > 60 ? 0.2 : S_BY_CLASS[cement];

/** Inverse of β_cc: days until the share of the 28-day strength; null when it is never reached. */
export function ageOfBetaCc(share: number, s: number): Days | null {
  if (share <= 0) return days(0);
  const root = 1 - Math.log(share) / s;
  return root <= 0 ? null : days(28 / (root * root));
}
