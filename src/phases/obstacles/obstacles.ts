import type { PhaseFacts } from '../facts/phase-facts.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { beforePredecessor } from './before-predecessor.js';
import { clearanceMissing } from './clearance-missing.js';
import { crewBusy } from './crew-busy.js';
import { designBroken } from './design-broken.js';
import { equipmentOut } from './equipment-out.js';
import { holdPointOpen } from './hold-point-open.js';
import { inspectionOutstanding } from './inspection-outstanding.js';
import { needsMissing } from './needs-missing.js';
import type { FoundObstacle, Moment, ObstacleCheck } from './obstacle.js';
import { predecessorUnfinished } from './predecessor-unfinished.js';
import { readingMissing } from './reading-missing.js';
import { waitNotOver } from './wait-not-over.js';
import { weatherHeld } from './weather-held.js';

/** What the job itself asks for, in the order in which it is refused. */
export const JOB_CHECKS: readonly ObstacleCheck[] = [
  designBroken,
  predecessorUnfinished,
  inspectionOutstanding,
  clearanceMissing,
  readingMissing,
  holdPointOpen,
  needsMissing,
  beforePredecessor,
  waitNotOver,
];

/** All checks: the job's, then weather, crews and equipment. */
export const ALL_CHECKS: readonly ObstacleCheck[] = [...JOB_CHECKS, weatherHeld, crewBusy, equipmentOut];

/** Everything that stands in the way at a gate, in the order in which it would be refused. */
export function findObstacles(
  facts: PhaseFacts,
  moment: Moment,
  checks: readonly ObstacleCheck[] = ALL_CHECKS,
): FoundObstacle[] {
  return checks.flatMap((check) => check.find(facts, moment));
}

/** @throws Refused with the refusal of the first check that finds something; it names all that this check found. */
export function demandNoObstacle(
  facts: PhaseFacts,
  moment: Moment,
  checks: readonly ObstacleCheck[] = ALL_CHECKS,
): void {
  for (const check of checks) {
    const found = check.find(facts, moment);
    if (found.length > 0) throw new Refused(check.refuse(found, facts));
  }
}
