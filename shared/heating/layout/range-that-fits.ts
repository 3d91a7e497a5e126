import { closestSpacing, type LayoutCable } from './cable.js';
import type { Layer } from './layer.js';

/** Label lengths that surfaces take within the limits of a cable, in. */
export interface FitRange {
  readonly shortest: number;
  readonly longest: number;
}

/**
 * From the longest set, at the closest spacing, down to where the next wider spacings would leave lengths out that
 * nothing drawn in makes up for. What any of the layers takes counts.
 */
export function rangeThatFits(layers: readonly Layer[]): FitRange {
  const spreads = layers.flatMap((layer) => layer.spreads()).sort((p, q) => q.full - p.full);
  if (spreads.length === 0) return { shortest: 0, longest: 0 };
  const longest = spreads[0]!.full;
  let shortest = longest;
  for (const spread of spreads) {
    if (spread.full < shortest - HAIR) break;
    shortest = Math.min(shortest, spread.least);
  }
  return { shortest, longest };
}

/** A hole this narrow is none, in. */
const HAIR = 0.01;

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
