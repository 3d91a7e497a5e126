import type { ReadingStage } from '../entry/template/words.js';
import type { EpochMs } from '../units/time.js';

/** A reading as far as needs ask: where, when, and whether it was accepted. */
export interface JudgedReading {
  readonly stage: ReadingStage;
  readonly areaKey: string | null;
  readonly at: EpochMs;
  readonly accepted: boolean;
}

/** The latest of the readings; of two at one instant the one that was not accepted. */
export function latestReading(readings: readonly JudgedReading[]): JudgedReading | undefined {
  return readings.reduce<JudgedReading | undefined>((latest, reading) => {
    if (!latest || reading.at > latest.at) return reading;
    return reading.at === latest.at && !reading.accepted ? reading : latest;
  }, undefined);
}

/** Whether the latest reading of a stage (in an area) was accepted: a good one is undone by a bad one after it. */
export function stageAccepted(
  readings: readonly JudgedReading[],
  stage: ReadingStage,
  areaKey?: string,
): boolean {
  const asked = readings.filter(
    (one) => one.stage === stage && (areaKey === undefined || one.areaKey === areaKey),
  );
  return latestReading(asked)?.accepted === true;
}
