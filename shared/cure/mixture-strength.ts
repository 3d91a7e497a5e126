import { describeSource } from '../entry/source.js';
import { psi, toMegapascals, toPsi, type Psi } from '../units/stress.js';
import { hours, type Hours } from '../units/time.js';
import { ACCELERATOR_SOURCE, acceleratedAge, plainAge } from './accelerator.js';
import { ageMethod, type AgeMethod } from './age-method.js';
import { ageOfHyperbolicStrength, hyperbolicStrength, type HyperbolicCurve } from './hyperbolic-strength.js';
import { curveOf, type Mixture } from './mixture.js';
import { ageOfStrength, strengthAt } from './strength-curve.js';

/** Strength of a mixture at an equivalent age; an accelerator counts, see `accelerator.ts`. */
export function mixtureStrength(mixture: Mixture, age: Hours): Psi {
  const counted = mixture.accelerated === true ? acceleratedAge(age) : age;
  const hyperbolic = hyperbolicOf(mixture);
  return toPsi(hyperbolic ? hyperbolicStrength(hyperbolic, counted) : strengthAt(curveOf(mixture), counted));
}

/** Equivalent age at which a mixture has a strength; null when it never has. */
export function ageOfMixtureStrength(mixture: Mixture, required: Psi): Hours | null {
  const hyperbolic = hyperbolicOf(mixture);
  const wanted = toMegapascals(required);
  const age = hyperbolic
    ? ageOfHyperbolicStrength(hyperbolic, wanted)
    : ageOfStrength(curveOf(mixture), wanted);
  return age === null || mixture.accelerated !== true ? age : plainAge(age);
}

/** How the age of a mixture is counted. */
export const ageMethodOf = (mixture: Mixture): AgeMethod => ageMethod(mixture.age);

/** How the strength of a mixture is estimated, in words. */
export function methodWords(mixture: Mixture): string {
  const curve = `${ageMethodOf(mixture).text}; curve of ${mixture.name}`;
  if (mixture.accelerated !== true) return curve;
  return `${curve}; accelerator counted as half as much age again, a day at most (${describeSource(ACCELERATOR_SOURCE)})`;
}

function hyperbolicOf({ hyperbolic, ultimatePsi }: Mixture): HyperbolicCurve | null {
  if (!hyperbolic) return null;
  const { kPerHour: k, startHours } = hyperbolic;
  return { ultimate: toMegapascals(psi(ultimatePsi)), k, start: hours(startHours) };
}
