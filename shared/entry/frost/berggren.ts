import { feet, type Feet } from '../../units/length.js';
import type { Days } from '../../units/time.js';
import type { Fahrenheit } from '../../units/temperature.js';
import { fromMemory, type Source } from '../source.js';
import { neumannLambda } from './neumann-root.js';
import { demandSoil, latentHeat, soilConductivity, soilHeat, type Soil } from './soil.js';

/** Where the formula comes from. */
export const BERGGREN_SOURCE: Source = fromMemory(
  'modified Berggren formula, UFC 3-130-06; exact Neumann root',
);

/** A winter as the ground's surface has it. */
export interface Winter {
  /** Freezing index at the surface, n·F, °F·days. Bare, shovelled pavement has nearly that of the air. */
  readonly surfaceIndex: number;
  /** Length of the freezing season. */
  readonly season: Days;
  readonly meanAnnual: Fahrenheit;
}

/** How deep frost goes, and what it was worked out from. */
export interface FrostPenetration {
  readonly depth: Feet;
  readonly latentHeat: number;
  readonly conductivity: number;
  readonly alpha: number;
  readonly mu: number;
  readonly lambda: number;
}

const FREEZING = 32;

/** X = λ·√(48·K·nF/L). A place's adopted frost depth goes first; this is for where none is adopted. */
export function frostPenetration(winter: Winter, soil: Soil): FrostPenetration {
  demandSoil(soil);
  demandWinter(winter);
  const { surfaceIndex, season, meanAnnual } = winter;
  const cold = surfaceIndex / season;
  const latent = latentHeat(soil);
  const conductivity = soilConductivity(soil);
  const alpha = (meanAnnual - FREEZING) / cold;
  const mu = (soilHeat(soil) * cold) / latent;
  const lambda = neumannLambda(mu, alpha);
  return {
    depth: feet(lambda * Math.sqrt((48 * conductivity * surfaceIndex) / latent)),
    latentHeat: latent,
    conductivity,
    alpha,
    mu,
    lambda,
  };
}

function demandWinter({ surfaceIndex, season, meanAnnual }: Winter): void {
  if (!(surfaceIndex > 0 && season > 0))
    throw new RangeError(
      `freezing index and season must be more than 0, got ${surfaceIndex} °F·days and ${season} days`,
    );
  if (!(meanAnnual >= FREEZING))
    throw new RangeError(
      `a mean of ${meanAnnual} °F is permafrost: the formula does not hold; ask a geotechnical engineer`,
    );
}
