import { inches, toInches } from '../../units/length.js';
import type { FrostDepth } from '../measurement/measurement.js';
import { describeSource } from '../source.js';
import { BERGGREN_SOURCE, frostPenetration, type Winter } from './berggren.js';
import { SOIL_SOURCE, type Soil } from './soil.js';

/** The frost depth to dig to: the place's own where it has adopted one, else computed and rounded up to the inch. */
export function frostDepth(adopted: FrostDepth | null, winter: Winter, soil: Soil): FrostDepth {
  if (adopted) return adopted;
  const { depth } = frostPenetration(winter, soil);
  return {
    depth: inches(Math.ceil(toInches(depth) - 1e-9)),
    source: `${describeSource(BERGGREN_SOURCE)}; soil by ${describeSource(SOIL_SOURCE)}; surface index ${winter.surfaceIndex} °F·days; no depth is adopted here`,
  };
}
