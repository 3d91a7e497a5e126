import { HOUR_MS, epochMs, type EpochMs } from '../../units/time.js';
import type { CureRequest } from '../prediction/cure-prediction.js';
import { freezingProtectionDays } from '../rules/protection-days.js';

/** Until when a placement must be protected against freezing: 3 days from placing, 2 when accelerated. */
export function keptWarmUntil({ placement }: CureRequest): EpochMs {
  const days = freezingProtectionDays(placement.mixture.accelerated === true);
  return epochMs(placement.placedAt + days * 24 * HOUR_MS);
}
