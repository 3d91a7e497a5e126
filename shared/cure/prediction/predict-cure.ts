import { describeSource } from '../../entry/source.js';
import { celsius, toFahrenheit } from '../../units/temperature.js';
import { hours, hoursBetween } from '../../units/time.js';
import { ageMethodOf, methodWords, mixtureStrength } from '../mixture-strength.js';
import { STRENGTH_CAUTION } from '../placement.js';
import { THERMAL_METHOD, THERMAL_SOURCE } from '../thermal/thermal-method.js';
import { AirByHour } from './air-by-hour.js';
import type { CurePrediction, CureRequest } from './cure-prediction.js';
import { measuredPart } from './measured-part.js';
import { Milestones } from './milestones.js';
import { predictedPart } from './predicted-part.js';

/**
 * How a placement goes. Readings replace the model up to the last of them, and the model goes on from the temperature
 * that was read last. What is measured and what is predicted stay apart in every answer; a prediction never releases.
 */
export function predictCure(request: CureRequest): CurePrediction {
  const { placement, assumedAir, air } = request;
  const milestones = new Milestones(placement);
  const measured = measuredPart(request, milestones);
  const predicted = predictedPart(request, measured, milestones, new AirByHour(air, assumedAir));
  const { release, firstFreeze, freezes, lowest } = milestones;
  const strengthOf = (age: number) => mixtureStrength(placement.mixture, hours(age));
  return {
    points: [...measured.points, ...predicted.points],
    release,
    firstFreeze,
    hoursToFirstFreeze: firstFreeze && hoursBetween(placement.placedAt, firstFreeze.at),
    lowest: {
      at: lowest?.at ?? placement.placedAt,
      basis: lowest?.basis ?? 'measured',
      coldest: lowest ? toFahrenheit(celsius(lowest.temperature)) : placement.placedTemperature,
    },
    freezes: freezes && { at: freezes.at, basis: freezes.basis, strength: strengthOf(freezes.age) },
    airKnownUntil: predicted.airKnownUntil,
    unknownFrom: predicted.unknownFrom,
    energyError: predicted.energyError,
    method: `${methodWords(placement.mixture)}; temperature by ${THERMAL_METHOD} (${describeSource(THERMAL_SOURCE)})`,
    assumption:
      assumedAir === null
        ? 'nothing is predicted where the air is unknown'
        : `air at ${assumedAir} °F where none is forecast`,
    source: ageMethodOf(placement.mixture).source,
    caution: STRENGTH_CAUTION,
  };
}
