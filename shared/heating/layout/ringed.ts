import { signedArea } from '../../entry/geometry/outline.js';
import { closestSpacing, type LayoutCable } from './cable.js';
import type { Field } from './field.js';
import { NoWayThrough } from './fields-of.js';
import { innerRing, type RingSide } from './inner-ring.js';
import { samplePath } from './measure/sample-path.js';
import { GapFinder } from './measure/widest-gap.js';
import type { Piece } from './path.js';

/** A field with the line along its setbacks. */
export interface Ringed {
  readonly field: Field;
  readonly ring: readonly RingSide[];
  /** Measures the widest gap that pieces on the level leave in it, in; a little less than it is, by what the grid misses. */
  readonly gap: (pieces: readonly Piece[]) => number;
}

/** How finely gaps are looked for while a layout is sought, in: at so many places at most, but for small fields. */
const FINEST = 1;
const PLACES = 6000;

/** Makes ready a field to be laid. */
export function ringed(field: Field, cable: LayoutCable): Ringed {
  const ring = innerRing(field.sides);
  if (!ring) throw new NoWayThrough(`the setbacks leave nothing of "${field.key}"; it is too narrow to heat`);
  const pitch = Math.max(FINEST, Math.sqrt(signedArea(field.sides.map(({ a }) => a)) / PLACES));
  const finder = new GapFinder({ ...field, level: 0 }, closestSpacing(cable) / 2, pitch);
  return { field, ring, gap: (pieces) => finder.widest(samplePath(pieces, pitch)).across };
}
