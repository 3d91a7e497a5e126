import { closestSpacing, type LayoutCable } from './cable.js';
import type { LayoutMeasure } from './measure/measure-layout.js';

/** Forgiven of a measured length, in: below what a tape shows. */
const TAPE = 0.02;

/** Every limit that a measured layout breaks, in words with the values; empty when it keeps them all. */
export function faultsOf(measure: LayoutMeasure, cable: LayoutCable): string[] {
  const faults: string[] = [];
  const off = measure.length - cable.length;
  if (Math.abs(off) > 0.5)
    faults.push(`the path is ${say(Math.abs(off))} ${off > 0 ? 'longer' : 'shorter'} than the label`);
  if (measure.closest < closestSpacing(cable) - TAPE)
    faults.push(`runs ${say(measure.closest)} apart, at least ${say(closestSpacing(cable))} asked`);
  if (measure.tightestBend < cable.leastBend - TAPE)
    faults.push(`a bend of ${say(measure.tightestBend)}, at least ${say(cable.leastBend)} asked`);
  if (measure.clearances.sides < -TAPE)
    faults.push(`a run ${say(-measure.clearances.sides)} inside the setback of a side`);
  if (measure.clearances.keepOuts < -TAPE)
    faults.push(`a run ${say(-measure.clearances.keepOuts)} too near to a keep-out`);
  for (const { key, widestGap } of measure.fields) {
    if (widestGap.across > cable.greatestSpacing + TAPE)
      faults.push(
        `a gap of ${say(widestGap.across)} in "${key}", at most ${say(cable.greatestSpacing)} allowed`,
      );
  }
  return faults;
}

const say = (inches: number): string => `${Math.round(inches * 100) / 100} in`;
