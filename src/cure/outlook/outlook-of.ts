import type { CurePrediction, CurvePoint, Reached } from '../../../shared/cure/prediction/cure-prediction.js';
import type { CureMoment, CureOutlook, CurePoint } from './outlook.model.js';

/** A drawing shows no more than this of each, measured and predicted. */
const MOST_POINTS = 120;

/** What comes so long after the strength is reached is of no interest. */
const AFTERWARDS_MS = 24 * 3_600_000;

/** A prediction as callers see it. */
export function outlookOf(prediction: CurePrediction, requiredPsi: number): CureOutlook {
  const { points, release, firstFreeze, lowest, freezes, airKnownUntil, source } = prediction;
  const last = release && firstFreeze ? Math.max(release.at, firstFreeze.at) + AFTERWARDS_MS : Infinity;
  const of = (basis: CurvePoint['basis']) =>
    thinned(points.filter((point) => point.basis === basis && (basis === 'measured' || point.at <= last)));
  return {
    points: [...of('measured'), ...of('predicted')].map(pointOf),
    requiredPsi,
    release: release && moment(release),
    firstFreeze: firstFreeze && moment(firstFreeze),
    hoursToFirstFreeze: prediction.hoursToFirstFreeze,
    lowest: { ...moment(lowest), coldestF: rounded(lowest.coldest) },
    freezes: freezes && { ...moment(freezes), psi: rounded(freezes.strength) },
    airKnownUntil: airKnownUntil === null ? null : new Date(airKnownUntil),
    method: prediction.method,
    assumption: prediction.assumption,
    mark: source.mark,
    source: source.text,
    caution: prediction.caution,
  };
}

const moment = ({ at, basis }: Reached): CureMoment => ({
  at: new Date(at),
  basis,
  coldestF: null,
  psi: null,
});

const pointOf = ({ at, basis, counted, coldest, air, strength }: CurvePoint): CurePoint => ({
  at: new Date(at),
  basis,
  temperatureF: rounded(counted),
  coldestF: rounded(coldest),
  airF: air === null ? null : rounded(air),
  psi: rounded(strength),
});

const rounded = (value: number): number => Math.round(value * 10) / 10;

/** Every so many-th of a list, its first and last always. */
export function thinned<T>(list: readonly T[], most = MOST_POINTS): T[] {
  const every = Math.max(1, Math.ceil((list.length - 1) / (most - 1)));
  return list.filter((_, i) => i % every === 0 || i === list.length - 1);
}
