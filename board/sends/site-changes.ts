import type { ChangeName } from './change-documents.js';

/**
 * Work on site: it has happened, whenever it is sent, and so it is sent by itself. Everything else was meant for the
 * plan of its moment; left unsent by an earlier page it waits for the person's word.
 */
const SITE_CHANGES: ReadonlySet<string> = new Set<ChangeName>([
  'markPhase',
  'notePhase',
  'tellRemaining',
  'decideHoldPoint',
  'recordCableReading',
  'recordTemperature',
  'recordPlacement',
  'takeProtectionOff',
  'callWeatherHold',
  'liftWeatherHold',
  'addPhoto',
]);

export const ofTheSite = (change: string): boolean => SITE_CHANGES.has(change);
