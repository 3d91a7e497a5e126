import { type FirstFreezeFinding, firstFreeze } from '../../shared/cure/first-freeze.js';
import { measuredStrength } from '../../shared/cure/measured-strength.js';
import type { MeasuredStrength } from '../../shared/cure/strength-estimate.js';
import { epochMs } from '../../shared/units/time.js';
import { concreteReadings, curePlacement, type ReadPlacement } from './stored-placement.js';

/** Strength by the temperatures read in a placement; null when none were read, for then nothing is measured. */
export function measuredStrengthOf(
  row: ReadPlacement,
  at: Date,
  requiredPsi = row.requiredPsi,
): MeasuredStrength | null {
  if (row.readings.length === 0) return null;
  return measuredStrength(curePlacement(row, requiredPsi), concreteReadings(row), epochMs(at.getTime()));
}

/** Whether it froze before it may, by the temperatures read. */
export function firstFreezeOf(row: ReadPlacement, at: Date): FirstFreezeFinding {
  return firstFreeze(curePlacement(row), concreteReadings(row), epochMs(at.getTime()));
}
