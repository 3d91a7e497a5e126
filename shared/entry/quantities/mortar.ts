import type { CubicYards } from '../../units/length.js';

/** What mortar of a volume is mixed from. */
export interface MortarMix {
  /** Sacks of cement, one cubic foot each. */
  readonly sacks: number;
  readonly sandCubicFeet: number;
}

/**
 * Rule 38: a cubic yard of mortar takes 38 cubic feet of dry parts, so one to three takes 9.5 sacks of cement and
 * 28.5 ft³ of sand. Source: Navy Builder training manual, "rule 38".
 */
export function mortarMix(volume: CubicYards, sandParts: number): MortarMix {
  if (!(sandParts > 0)) throw new RangeError(`sand parts must be more than 0, got ${sandParts}`);
  const part = (38 / (1 + sandParts)) * volume;
  return { sacks: part, sandCubicFeet: part * sandParts };
}
