import { type FirstFreezeFinding, firstFreeze } from '../../shared/cure/first-freeze.js';
import { measuredRelease } from '../../shared/cure/rules/measured-release.js';
import { measuredStrength } from '../../shared/cure/measured-strength.js';
import type { MeasuredStrength } from '../../shared/cure/strength-estimate.js';
import type { Finding } from '../../shared/entry/rules/finding.js';
import { psi } from '../../shared/units/stress.js';
import { epochMs } from '../../shared/units/time.js';
import { concreteReadings, curePlacement, mixtureOf, type ReadPlacement } from './stored-placement.js';

/** Strength by the temperatures read in a placement; null when none were read, for then nothing is measured. */
export function measuredStrengthOf(
  row: ReadPlacement,
  at: Date,
  requiredPsi = row.requiredPsi,
): MeasuredStrength | null {
  if (row.readings.length === 0) return null;
  return measuredStrength(curePlacement(row, requiredPsi), concreteReadings(row), epochMs(at.getTime()));
}

/** Whether its measured temperatures release it, with the method, its source and its caution. */
export function measuredReleaseOf(row: ReadPlacement, at: Date, requiredPsi = row.requiredPsi): Finding {
  return measuredRelease(measuredStrengthOf(row, at, requiredPsi), {
    mixture: mixtureOf(row),
    required: psi(requiredPsi),
  });
}

/** Whether it froze before it may, by the temperatures read. */
export function firstFreezeOf(row: ReadPlacement, at: Date): FirstFreezeFinding {
  return firstFreeze(curePlacement(row), concreteReadings(row), epochMs(at.getTime()));
}
