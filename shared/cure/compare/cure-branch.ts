import type { Finding } from '../../entry/rules/finding.js';
import { hours, hoursBetween, type EpochMs, type Hours } from '../../units/time.js';
import { predictCure } from '../prediction/predict-cure.js';
import type { CurePrediction, CureRequest } from '../prediction/cure-prediction.js';
import { equipmentDays, type EquipmentDays } from '../protection/equipment-days.js';
import type { ProtectionPlan } from '../protection/protection-plan.js';
import { protectionFaults } from '../protection/check-plan.js';
import { placingTemperature } from '../rules/placing-temperature.js';
import { protectionDays, type Service } from '../rules/protection-days.js';
import { branchCautions } from './branch-cautions.js';

/** One way to go about a placement that meets cold weather: protect it now, or wait and place it later. */
export interface CureBranch {
  readonly kind: 'protect' | 'wait';
  readonly placedAt: EpochMs;
  readonly plan: ProtectionPlan;
  readonly prediction: CurePrediction;
  /** From placing until its protection may come off: its days, or its strength if that takes longer. */
  readonly protectedHours: Hours | null;
  readonly equipment: EquipmentDays;
  readonly placing: Finding;
  readonly cautions: readonly string[];
}

/** Carries one branch out. Throws on a plan that cannot be carried out, saying what to change. */
export function cureBranch(
  kind: 'protect' | 'wait',
  request: CureRequest,
  service: Service = 'no-load-exposed',
): CureBranch {
  const { placement, plan, section } = request;
  const faults = protectionFaults(plan);
  if (faults.length > 0) throw new RangeError(faults.join('; '));
  const prediction = predictCure(request);
  const days = protectionDays(service, placement.mixture.accelerated === true);
  const least = typeof days === 'number' ? days * 24 : 0;
  const strong = prediction.release && hoursBetween(placement.placedAt, prediction.release.at);
  const protectedHours = strong === null ? null : hours(Math.max(least, strong));
  const last = prediction.points.at(-1)?.at ?? placement.placedAt;
  return {
    kind,
    placedAt: placement.placedAt,
    plan,
    prediction,
    protectedHours,
    equipment: equipmentDays(plan, protectedHours ?? hoursBetween(placement.placedAt, last)),
    placing: placingTemperature(section.thickness, placement.placedTemperature),
    cautions: branchCautions(plan, prediction),
  };
}
