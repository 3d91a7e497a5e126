import { neighbour, type Heading, type Lattice } from '../lattice/lattice.js';

/**
 * The way along the edge of a lattice from one node to another, with the edge on one hand (1 or -1), as one feels
 * along a wall in the dark; detours into dead ends are left out. Null when it does not lead there.
 */
export function contour(
  lattice: Lattice,
  from: number,
  heading: Heading,
  hand: 1 | -1,
  to: number,
): number[] | null {
  const turns = [hand, 0, -hand, 2];
  const way = [from];
  const reached = new Map([[from, 0]]);
  let node = from;
  let towards = heading;
  for (let step = 0; step < 4 * lattice.free.length; step++) {
    let next = -1;
    for (const turn of turns) {
      const tried = ((towards + turn + 4) % 4) as Heading;
      next = neighbour(lattice, node, tried);
      if (next < 0) continue;
      towards = tried;
      break;
    }
    if (next < 0) return null;
    node = next;
    const before = reached.get(node);
    if (before === undefined) {
      reached.set(node, way.length);
      way.push(node);
    } else {
      for (const left of way.splice(before + 1)) reached.delete(left);
      // Once around and nowhere else to go.
      if (before === 0 && step > 4) return null;
    }
    if (node === to) return way;
  }
  return null;
}
