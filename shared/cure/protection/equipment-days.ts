import type { Hours } from '../../units/time.js';
import type { ProtectionPlan } from './protection-plan.js';

/** What a plan takes of the company's equipment, in days of 24 h. */
export interface EquipmentDays {
  /** Blankets by layer. */
  readonly blanket: number;
  readonly enclosure: number;
  readonly heater: number;
  /** Hours of heating. */
  readonly heatingHours: number;
}

/** Equipment-days and heating hours of a plan; what has no end lasts until `end`, h from placing. */
export function equipmentDays({ blankets, heat, offAt }: ProtectionPlan, end: Hours): EquipmentDays {
  const last = offAt === null ? end : Math.min(offAt, end);
  const lasts = ({ from, until }: { from: Hours; until: Hours | null }) =>
    Math.max(0, Math.min(until ?? last, last) - from);
  const covered = blankets.reduce((sum, stretch) => sum + stretch.layers * lasts(stretch), 0);
  const heated = heat.reduce((sum, stretch) => sum + lasts(stretch), 0);
  return { blanket: covered / 24, enclosure: heated / 24, heater: heated / 24, heatingHours: heated };
}
