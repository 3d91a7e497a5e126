import { ageOfMixtureStrength } from '../../shared/cure/mixture-strength.js';
import type { CurePrediction } from '../../shared/cure/prediction/cure-prediction.js';
import { psi } from '../../shared/units/stress.js';
import { measuredStrengthOf } from './measured-cure.js';
import { mixtureOf, type ReadPlacement } from './stored-placement.js';
import { StrengthBasis, type StrengthEstimate } from './strength-estimate.model.js';

/**
 * The strength of a placement as callers see it: by its readings where there are some, else by the prediction, which is
 * computed only then. The two are never mixed; `basis` says which it is.
 */
export async function strengthEstimateOf(
  row: ReadPlacement,
  now: Date,
  prediction: () => Promise<CurePrediction>,
): Promise<StrengthEstimate> {
  const measured = measuredStrengthOf(row, now);
  if (!measured) return predicted(row, now, await prediction());
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

function predicted(row: ReadPlacement, now: Date, prediction: CurePrediction): StrengthEstimate {
  const { points, method, assumption, source, caution, release } = prediction;
  const strength = psi(points.findLast(({ at }) => at <= now.getTime())?.strength ?? 0);
  return {
    basis: StrengthBasis.predicted,
    psi: strength,
    requiredPsi: row.requiredPsi,
    equivalentAgeHours: strength > 0 ? (ageOfMixtureStrength(mixtureOf(row), strength) ?? 0) : 0,
    method: `${method}; ${assumption} (${source.text})`,
    mark: source.mark,
    caution,
    releaseAt: release && new Date(release.at),
    lowestF: null,
  };
}

const gapsNote = (gaps: number): string =>
  gaps === 0 ? '' : `; ${gaps} stretch${gaps > 1 ? 'es' : ''} without readings count for nothing`;
