import { direction, distance, dot } from '../../../entry/geometry/point.js';
import { placeOf, type Lattice } from '../lattice/lattice.js';

/** Forgiven of a bend's room, in. */
const HAIR = 1e-3;

/**
 * Whether the stretches of a path between its corners are long enough for the lattice's bend at both of their ends. Nodes on the
 * way that are no corners do no harm; both ends of the path are no corners.
 */
export function bendsFit(lattice: Lattice, way: readonly number[]): boolean {
  const line = way.map((node) => placeOf(lattice, node));
  let long = 0;
  let tangent = 0;
  for (let i = 1; i < line.length; i++) {
    long += distance(line[i - 1]!, line[i]!);
    const next = line[i + 1];
    const turn = next ? dot(direction(line[i - 1]!, line[i]!), direction(line[i]!, next)) : 1;
    if (next && turn > STRAIGHT) continue;
    // The tangent of half the turn, from its cosine.
    const own = next ? Math.sqrt((1 - turn) / (1 + turn)) : 0;
    if (long < lattice.bend * (tangent + own) - HAIR) return false;
    [long, tangent] = [0, own];
  }
  return true;
}

const STRAIGHT = 1 - 1e-9;
