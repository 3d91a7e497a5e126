import { feet, inches, type Feet, type Inches } from '../units/length.js';

/** A rectangle laid with runs to and fro at one spacing. */
export interface SerpentineFacts {
  /** Side across the runs. */
  readonly across: Inches;
  /** Side along the runs. */
  readonly alongRuns: Inches;
  /** How far the cable keeps from every edge. */
  readonly setback: Inches;
  readonly spacing: Inches;
}

/** Cable that a plain rectangle takes: a figure for choosing a set, before anything is drawn. */
export interface SerpentineEstimate {
  readonly runs: number;
  /** With turns as half circles: n·(L − s) + (n − 1)·π·s/2. */
  readonly roundTurns: Feet;
  /** With square turns: n·L + (n − 1)·s. */
  readonly squareTurns: Feet;
}

/** Runs and cable of a plain rectangle. Throws where the setbacks leave nothing to lay. */
export function estimateSerpentine({
  across,
  alongRuns,
  setback,
  spacing,
}: SerpentineFacts): SerpentineEstimate {
  if (!(spacing > 0)) throw new RangeError(`the spacing must be more than 0 in, got ${spacing}`);
  const wide = inches(across - 2 * setback);
  const long = inches(alongRuns - 2 * setback);
  if (wide < 0 || long < spacing)
    throw new RangeError(
      `a setback of ${setback} in leaves no room in ${across} by ${alongRuns} in; lessen it`,
    );
  const runs = Math.floor(wide / spacing + 1e-9) + 1;
  return {
    runs,
    roundTurns: feet((runs * (long - spacing) + ((runs - 1) * Math.PI * spacing) / 2) / 12),
    squareTurns: feet((runs * long + (runs - 1) * spacing) / 12),
  };
}
