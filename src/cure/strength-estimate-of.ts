import { cautiousAge } from '../../shared/cure/cautious-age.js';
import { intervalsBetween } from '../../shared/cure/interval.js';
import { curveOf } from '../../shared/cure/mixture.js';
import { strengthAt } from '../../shared/cure/strength-curve.js';
import { toPsi } from '../../shared/units/stress.js';
import { type Fahrenheit, toCelsius } from '../../shared/units/temperature.js';
import { epochMs } from '../../shared/units/time.js';
import { measuredStrengthOf } from './measured-cure.js';
import { assumedFor, predictedReleaseOf } from './predicted-cure.js';
import { curePlacement, type ReadPlacement } from './stored-placement.js';
import { StrengthBasis, type StrengthEstimate } from './strength-estimate.model.js';

/**
 * The strength of a placement as callers see it: by its readings where there are some, else by an assumed
 * temperature. The two are never mixed; `basis` says which it is.
 */
export function strengthEstimateOf(row: ReadPlacement, now: Date, air: Fahrenheit): StrengthEstimate {
  const measured = measuredStrengthOf(row, now);
  if (!measured) return predicted(row, now, air);
  return {
    basis: StrengthBasis.measured,
    psi: measured.strength,
    requiredPsi: row.requiredPsi,
    equivalentAgeHours: measured.equivalentAge,
    method: `${measured.method} (${measured.source.text})${gapsNote(measured.gaps.length)}`,
    mark: measured.source.mark,
    caution: measured.caution,
    releaseAt: measured.reached ? new Date(measured.asOf) : null,
    lowestF: Math.min(row.placedTempF, ...row.readings.map(({ concreteF }) => concreteF)),
  };
}

function predicted(row: ReadPlacement, now: Date, air: Fahrenheit): StrengthEstimate {
  const { temperature } = assumedFor(row, air);
  const held = toCelsius(temperature);
  const placement = curePlacement(row);
  const until = epochMs(Math.max(now.getTime(), placement.placedAt));
  const age = cautiousAge(
    intervalsBetween([
      { at: placement.placedAt, temperature: held },
      { at: until, temperature: held },
    ]),
  );
  const release = predictedReleaseOf(row, now, air);
  return {
    basis: StrengthBasis.predicted,
    psi: toPsi(strengthAt(curveOf(placement.mixture), age)),
    requiredPsi: row.requiredPsi,
    equivalentAgeHours: age,
    method: `${release.method}; ${release.assumption} (${release.source.text})`,
    mark: release.source.mark,
    caution: release.caution,
    releaseAt: release.releaseAt === null ? null : new Date(release.releaseAt),
    lowestF: null,
  };
}

const gapsNote = (gaps: number): string =>
  gaps === 0 ? '' : `; ${gaps} stretch${gaps > 1 ? 'es' : ''} without readings count for nothing`;
