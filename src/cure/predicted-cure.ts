import { type AssumedTemperature, assumedTemperature } from '../../shared/cure/assumed-temperature.js';
import { predictedRelease } from '../../shared/cure/predicted-release.js';
import type { PredictedRelease } from '../../shared/cure/strength-estimate.js';
import { type Fahrenheit, fahrenheit } from '../../shared/units/temperature.js';
import { epochMs } from '../../shared/units/time.js';
import { concreteReadings, curePlacement, protectionOf, type ReadPlacement } from './stored-placement.js';

/** The temperature it is assumed to keep from the last reading on, under its protection in that air. */
export function assumedFor(row: ReadPlacement, air: Fahrenheit): AssumedTemperature {
  const last = row.readings.at(-1)?.airF;
  return assumedTemperature(protectionOf(row), last == null ? air : fahrenheit(last));
}

/** When it is expected to reach its strength: a date for the plan that releases nothing. */
export function predictedReleaseOf(row: ReadPlacement, at: Date, air: Fahrenheit): PredictedRelease {
  const { temperature } = assumedFor(row, air);
  return predictedRelease(curePlacement(row), concreteReadings(row), epochMs(at.getTime()), temperature);
}
