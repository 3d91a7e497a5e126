import type { Celsius } from '../../units/temperature.js';
import { celsius } from '../../units/temperature.js';
import { degreeOfHydration } from './hydration.js';
import { heatPerVolume, type HydrationHeat } from './hydration-heat.js';

/** What concrete does that loses no heat. */
export interface AdiabaticState {
  readonly temperature: Celsius;
  /** Degree of hydration. */
  readonly degree: number;
}

/**
 * Temperature of concrete that loses no heat, by backward Euler: the speed of a step is that at its end. With long steps
 * it runs ahead of the truth; with short ones it meets it.
 *
 * @param heatCapacity of the concrete, J/(m³·K)
 */
export function adiabatic(
  heat: HydrationHeat,
  start: Celsius,
  heatCapacity: number,
  steps: number,
  stepHours: number,
): AdiabaticState {
  const rise = heatPerVolume(heat) / heatCapacity;
  let age = 0;
  for (let i = 0; i < steps; i++) {
    const before = age;
    age = solve((end) => before + stepHours * heat.rate(at(end)) - end, before);
  }
  return { temperature: at(age), degree: degreeOfHydration(heat.hydration, age) };

  function at(end: number): Celsius {
    return celsius(start + rise * degreeOfHydration(heat.hydration, end));
  }
}

/** First root of a function that is positive at `low`, by doubling and halving. */
function solve(f: (x: number) => number, low: number): number {
  let from = low;
  let width = 1 / 64;
  while (f(from + width) > 0) {
    from += width;
    width *= 1.5;
  }
  let to = from + width;
  for (let i = 0; i < 60 && to > from; i++) {
    const middle = (from + to) / 2;
    if (f(middle) > 0) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}
