import type { CurePrediction } from '../prediction/cure-prediction.js';
import type { ProtectionPlan } from '../protection/protection-plan.js';

/** What people must mind who carry out a branch. */
export function branchCautions(plan: ProtectionPlan, prediction: CurePrediction): string[] {
  const heated = plan.heat.length > 0;
  return [
    prediction.caution,
    ...(heated
      ? [
          'Heaters: fresh air, 10 ft from tarpaulins, a fire extinguisher by, never left alone (29 CFR 1926.154).',
          'Carbon monoxide from unvented heaters kills: OSHA 50 ppm over 8 h; NIOSH 35 ppm, 200 ppm at any time.',
          'Fumes of unvented heaters make a fresh surface soft (carbonation) in the first 24 to 36 h: vent the heater.',
        ]
      : []),
    ...(prediction.freezes
      ? ['Expected to freeze before 500 psi: what freezes so early is lost and comes out again.']
      : []),
    ...(prediction.unknownFrom === null
      ? []
      : ['The forecast ends before the cure does: what comes after is unknown.']),
    ...(prediction.release ? [] : ['Its required strength is not in sight.']),
  ];
}
