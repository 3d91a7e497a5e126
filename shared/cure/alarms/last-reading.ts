import type { EpochMs } from '../../units/time.js';
import type { CureRequest } from '../prediction/cure-prediction.js';
import type { ConcreteReading } from '../placement.js';

/** The newest reading since placing; null when there is none. Of two at one instant the colder. */
export function lastReading({ placement, readings }: CureRequest, now: EpochMs): ConcreteReading | null {
  return readings
    .filter(({ at }) => at >= placement.placedAt && at <= now)
    .reduce<ConcreteReading | null>((last, reading) => {
      if (!last || reading.at > last.at) return reading;
      return reading.at === last.at && reading.concrete < last.concrete ? reading : last;
    }, null);
}
