import { toFahrenheit } from '../../units/temperature.js';
import type { EpochMs } from '../../units/time.js';
import { intervalsBetween, type CurePoint } from '../interval.js';
import { measuredHistory } from '../measured-history.js';
import { ageMethodOf, mixtureStrength } from '../mixture-strength.js';
import { AgeClock } from './age-clock.js';
import type { CureRequest, CurvePoint } from './cure-prediction.js';
import type { Milestones } from './milestones.js';

/** What readings show of a placement: its points, its age at the last of them. */
export interface MeasuredPart {
  readonly points: readonly CurvePoint[];
  readonly history: readonly CurePoint[];
  readonly clock: AgeClock;
  readonly last: EpochMs;
}

/** Carries a placement to its last reading; stretches without readings count for nothing. */
export function measuredPart(
  { placement, readings, now }: CureRequest,
  milestones: Milestones,
): MeasuredPart {
  const { points: history, gaps } = measuredHistory(placement, readings, now);
  const unmeasured = new Set<number>(gaps.map(({ from }) => from));
  const clock = new AgeClock(ageMethodOf(placement.mixture));
  const points: CurvePoint[] = [];
  history.forEach((point, i) => {
    const before = history[i - 1];
    if (before) {
      const age = clock.age;
      if (!unmeasured.has(before.at))
        intervalsBetween([before, point]).forEach((each) => clock.addInterval(each));
      const ages = [age, clock.age] as const;
      const { at: to, temperature } = point;
      milestones.note({ from: before.at, to, counted: ages, coldest: ages, temperature }, 'measured');
    } else milestones.begin(point.at, point.temperature);
    const at = toFahrenheit(point.temperature);
    const strength = mixtureStrength(placement.mixture, clock.age);
    points.push({
      at: point.at,
      basis: 'measured',
      counted: at,
      centre: at,
      surface: at,
      coldest: at,
      air: null,
      airKnown: false,
      strength,
      coldestStrength: strength,
    });
  });
  return { points, history, clock, last: history.at(-1)?.at ?? placement.placedAt };
}
