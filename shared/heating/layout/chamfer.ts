/** Leg of the chamfer that the trade cuts at 45° where the cable steps down, in. Common practice, no source. */
const USUAL = 1;
const EIGHTHS = 8;

/** What the tangents of a turn by 45° take on both sides of the chamfer's face, for a bend of radius 1. */
const TANGENT = Math.tan(Math.PI / 8);

/**
 * Leg of the chamfer at 45° that lets a cable step down without a bend tighter than `leastBend`: its face, √2 legs
 * long, must take the tangents of two turns by 45°. Rounded up to an eighth of an inch; an inch at least.
 */
export function chamferFor(leastBend: number): number {
  const needed = (2 * TANGENT * leastBend) / Math.SQRT2;
  return Math.max(USUAL, Math.ceil(needed * EIGHTHS - 1e-9) / EIGHTHS);
}

/** Room that a step down takes behind the face of the riser: chamfer, its upper bend, and a turn before it. */
export const roomAtNosing = (leastBend: number): number =>
  chamferFor(leastBend) + TANGENT * leastBend + leastBend;
