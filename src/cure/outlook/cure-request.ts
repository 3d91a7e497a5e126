import type { CureRequest } from '../../../shared/cure/prediction/cure-prediction.js';
import type { PlacementSection } from '../../../shared/cure/prediction/placement-section.js';
import { inches } from '../../../shared/units/length.js';
import { epochMs } from '../../../shared/units/time.js';
import {
  concreteReadings,
  curePlacement,
  protectionPlanOf,
  type ReadPlacement,
} from '../stored-placement.js';
import type { SiteAir } from './site-air.js';

/** How what a phase places lies: concrete on the ground, grout in block free on both faces, mortar as a bed. */
export function sectionOf(material: string, thickness: number): PlacementSection {
  const kind = material === 'grout' ? 'free' : material === 'mortar' ? 'bed' : 'on-ground';
  return { kind, thickness: inches(thickness), block: material === 'grout' };
}

/** What the core needs to tell how a placement goes. */
export function cureRequestOf(row: ReadPlacement, now: Date, { hours, assumed }: SiteAir): CureRequest {
  return {
    placement: curePlacement(row),
    section: sectionOf(row.material, row.sectionInches),
    plan: protectionPlanOf(row),
    readings: concreteReadings(row),
    now: epochMs(now.getTime()),
    air: hours,
    assumedAir: assumed,
  };
}
