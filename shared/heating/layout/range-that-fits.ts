import { closestSpacing, type LayoutCable } from './cable.js';
import { pathLength } from './cable-path.js';
import { samplePath } from './measure/sample-path.js';
import { widestGap } from './measure/widest-gap.js';
import type { Layer } from './solve-length.js';

/** Label lengths that surfaces take within the limits of a cable, in. */
export interface FitRange {
  readonly shortest: number;
  readonly longest: number;
}

const GROWTH = 1.12;

/** The longest set at the closest spacing; the shortest at the widest that leaves no gap over the greatest. */
export function rangeThatFits(layer: Layer): FitRange {
  const { cable, chain } = layer;
  const longest = layer.lengthAt(closestSpacing(cable));
  let shortest = longest;
  for (let spacing = closestSpacing(cable); spacing <= cable.greatestSpacing; spacing *= GROWTH) {
    const pieces = layer.path(chain.fields.map(() => spacing));
    const length = pathLength(pieces);
    if (length >= shortest) continue;
    const samples = samplePath(pieces, 0.5);
    const least = closestSpacing(cable);
    if (chain.fields.some((field) => widestGap(field, samples, least, 1).across > cable.greatestSpacing))
      break;
    shortest = length;
  }
  return { shortest, longest };
}

/** Says by how much a set does not fit, and what would. */
export function sayMisfit(
  cable: LayoutCable,
  { shortest, longest }: FitRange,
): { code: 'setTooLong' | 'setTooShort'; message: string } {
  const fits = `a set of ${feet(Math.ceil(shortest / 12))} to ${feet(Math.floor(longest / 12))} fits`;
  if (cable.length > longest) {
    const by = feet(Math.ceil((cable.length - longest) / 12));
    return {
      code: 'setTooLong',
      message: `the set is ${by} too long at the closest spacing of ${closestSpacing(cable)} in; ${fits}, or heat more surface; never cut the heating cable`,
    };
  }
  const by = feet(Math.ceil((shortest - cable.length) / 12));
  return {
    code: 'setTooShort',
    message: `the set is ${by} too short to leave no gap over ${cable.greatestSpacing} in; ${fits}, or heat less surface`,
  };
}

const feet = (count: number): string => `${count} ft`;
