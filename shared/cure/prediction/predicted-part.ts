import { celsius, toCelsius, toFahrenheit, type Celsius } from '../../units/temperature.js';
import { HOUR_MS, epochMs, type EpochMs } from '../../units/time.js';
import { ageMethodOf, mixtureStrength } from '../mixture-strength.js';
import { changesOf } from '../protection/protection-plan.js';
import { edgeFactor } from '../thermal/edge-factor.js';
import { SectionRun } from '../thermal/section-run.js';
import { AgeClock } from './age-clock.js';
import type { AirByHour } from './air-by-hour.js';
import type { CureRequest, CurvePoint } from './cure-prediction.js';
import type { MeasuredPart } from './measured-part.js';
import type { Milestones } from './milestones.js';
import { GROUND, sectionOf } from './placement-section.js';
import { surroundingsAt, type Surroundings } from './surroundings.js';

/** What the thermal model adds to the readings. */
export interface PredictedPart {
  readonly points: readonly CurvePoint[];
  readonly airKnownUntil: EpochMs | null;
  readonly unknownFrom: EpochMs | null;
  readonly energyError: number;
}

const HORIZON_HOURS = 336;
const STEP_MINUTES = 30;
/** The curve goes on for so long after the required strength. */
const AFTER_RELEASE_MS = 12 * HOUR_MS;

/** Runs the model from placing: through the readings, which it takes over, and on to the end of what is looked at. */
export function predictedPart(
  request: CureRequest,
  { history, last, clock }: MeasuredPart,
  milestones: Milestones,
  air: AirByHour,
): PredictedPart {
  const { placement, plan, section: shape, horizon = HORIZON_HOURS, stepMinutes = STEP_MINUTES } = request;
  if (!(stepMinutes >= 1 && stepMinutes <= 360)) {
    throw new RangeError(`A step of ${stepMinutes} min; give 1 to 360`);
  }
  const { placedAt, mixture } = placement;
  const section = sectionOf(shape, mixture, placement.placedTemperature);
  const material = section.layers[section.placed]!.material;
  const run = new SectionRun(section);
  const method = ageMethodOf(mixture);
  const counted = new AgeClock(method, clock);
  const coldestClock = new AgeClock(method, clock);
  const ground = { temperature: toCelsius(shape.ground ?? GROUND.temperature), resistance: 0 };
  const end = Math.max(placedAt + horizon * HOUR_MS, last);
  const stops = [
    ...history.map(({ at }) => at as number),
    ...changesOf(plan).map((h) => placedAt + h * HOUR_MS),
  ]
    .filter((at) => at > placedAt)
    .sort((a, b) => a - b);
  const measured = new Map(history.slice(1).map((point) => [point.at as number, point.temperature]));
  const points: CurvePoint[] = [];
  let cooling = 0;
  let nextStop = 0;
  let nextPoint = last + HOUR_MS;
  let coldBefore: Celsius = celsius(run.coldest);
  let knownUntil: EpochMs | null = null;
  let unbroken = true;
  let unknownFrom: EpochMs | null = null;

  for (let t = placedAt as number; t < end;) {
    while (nextStop < stops.length && stops[nextStop]! <= t) nextStop++;
    const to = Math.min(end, t + stepMinutes * 60_000, stops[nextStop] ?? Infinity);
    const around = surroundingsAt(plan, air, placedAt, t);
    if (!around && t >= last) {
      unknownFrom = epochMs(t);
      break;
    }
    const before = run.coldest;
    // Where the air of the past is unknown the readings alone tell: the model waits for the next of them.
    const face = around
      ? { temperature: around.beside, resistance: around.resistance }
      : { temperature: before, resistance: 1 };
    run.step((to - t) / 1000, face, section.below === 'air' ? face : ground);
    const time = (to - t) / HOUR_MS;
    cooling = face.temperature < run.coldest ? cooling + time : 0;
    if (t >= last && around) {
      unbroken &&= around.known;
      if (unbroken) knownUntil = epochMs(to);
      step(t, to, before, around, time);
      if (milestones.release && to >= Math.max(milestones.release.at + AFTER_RELEASE_MS, request.now)) break;
    }
    const read = measured.get(to);
    if (read !== undefined) {
      run.takeOver(read);
      coldBefore = read;
    }
    t = to;
  }
  return { points, airKnownUntil: knownUntil, unknownFrom, energyError: run.balance().error };

  function step(from: number, to: number, before: number, around: Surroundings, time: number): void {
    const now = run.coldest;
    const excess = Math.max(0, now - around.beside);
    const factor = edgeFactor(shape.coldest ?? 'corner', material, cooling, around.resistance);
    const cold = celsius(now - excess * (1 - factor));
    const ages = [counted.age, coldestClock.age] as const;
    counted.addSteady(time, celsius((before + now) / 2));
    coldestClock.addSteady(time, celsius((coldBefore + cold) / 2));
    coldBefore = cold;
    milestones.note(
      {
        from: epochMs(from),
        to: epochMs(to),
        counted: [ages[0], counted.age],
        coldest: [ages[1], coldestClock.age],
        temperature: cold,
      },
      'predicted',
    );
    if (to < nextPoint && to < end) return;
    nextPoint = to + HOUR_MS;
    points.push({
      at: epochMs(to),
      basis: 'predicted',
      counted: toFahrenheit(celsius(now)),
      centre: toFahrenheit(celsius(run.centre)),
      surface: toFahrenheit(celsius(run.surface)),
      coldest: toFahrenheit(cold),
      air: around.outside,
      airKnown: around.known,
      strength: mixtureStrength(mixture, counted.age),
      coldestStrength: mixtureStrength(mixture, coldestClock.age),
    });
  }
}
