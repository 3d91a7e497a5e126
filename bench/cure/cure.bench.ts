import { predictCure } from '../../shared/cure/prediction/predict-cure.js';
import { bench } from '../runner/bench.js';
import { count } from '../runner/option.js';
import { medianOf, once, rounded } from '../runner/timing.js';
import { explicitRun, longestStableStep } from './explicit-run.js';
import { implicitRun } from './implicit-run.js';
import { placements } from './placements.js';
import { wallOf } from './section.js';

const furthest = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((most, value, i) => Math.max(most, Math.abs(value - (b[i] ?? NaN))), 0);

/** Longest explicit step, halved from the longest stable one, that errs no more than the implicit scheme does. */
function equalStep(cells: number, exact: readonly number[], allowed: number): number {
  let seconds = longestStableStep(wallOf(cells));
  for (
    let halvings = 0;
    halvings < 8 && furthest(explicitRun(wallOf(cells), seconds), exact) > allowed;
    halvings++
  )
    seconds /= 2;
  return seconds;
}

/** One placement through fourteen days, beside a plain explicit scheme; and many after a change of forecast. */
export const cure = bench({
  name: 'cure',
  says: 'fourteen days of one placement beside a plain explicit scheme, and placements after a change of forecast',
  options: {
    cells: count('cells of the section', 4, 20),
    minutes: count('minutes of a step, a whole part of an hour', 1, 5),
    placements: count('placements that are looked at again', 1, 1000),
  },
  run({ cells, minutes, placements: many }, progress) {
    if (60 % minutes !== 0) throw new RangeError(`--minutes ${minutes}: give a whole part of an hour, as 5`);
    const seconds = minutes * 60;
    progress('running the section with steps of 5 s as the measure of both schemes');
    const exact = implicitRun(wallOf(cells), 5).hourly;
    const { hourly, energyError } = implicitRun(wallOf(cells), seconds);
    const implicitError = furthest(hourly, exact);
    const explicitSeconds = equalStep(cells, exact, implicitError);
    const explicitError = furthest(explicitRun(wallOf(cells), explicitSeconds), exact);
    const implicit = medianOf(
      Array.from({ length: 7 }, () => once(() => implicitRun(wallOf(cells), seconds))),
    );
    const explicit = medianOf(
      Array.from({ length: 7 }, () => once(() => explicitRun(wallOf(cells), explicitSeconds))),
    );
    placements(50, 0).forEach(predictCure);
    const changed = placements(many, 9);
    const again = once(() => changed.forEach((request) => predictCure(request)));
    const figures = {
      cells,
      stepMinutes: minutes,
      implicitMs: rounded(implicit),
      implicitErrorC: roundTo(implicitError),
      explicitStepSeconds: roundTo(explicitSeconds),
      explicitMs: rounded(explicit),
      explicitErrorC: roundTo(explicitError),
      explicitOverImplicit: roundTo(explicit / implicit),
      energyError,
      placements: many,
      againMs: rounded(again),
      placementsPerSecond: Math.round((many * 1000) / again),
    };
    return {
      figures,
      text: [
        `14 days, ${cells} cells, ${minutes} min: ${figures.implicitMs} ms, within ${figures.implicitErrorC} °C, heat lost ${energyError.toExponential(1)}`,
        `explicit, ${figures.explicitStepSeconds} s: ${figures.explicitMs} ms, within ${figures.explicitErrorC} °C: ${figures.explicitOverImplicit} times as long`,
        `${many} placements after a change of forecast: ${figures.againMs} ms, ${figures.placementsPerSecond} a second`,
      ].join('\n'),
      ok: energyError < 1e-3 && Number.isFinite(explicitError) && implicitError < 0.5,
    };
  },
});

const roundTo = (value: number): number => Math.round(value * 1000) / 1000;
