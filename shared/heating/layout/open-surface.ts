import { signedArea } from '../../entry/geometry/outline.js';
import { distance } from '../../entry/geometry/point.js';
import { closestSpacing, type LayoutCable } from './cable.js';
import type { FieldChain } from './field.js';
import { innerRing } from './inner-ring.js';

/**
 * Surface that the cable has to itself, in²: inside the setbacks, and half the closest spacing beside them, as the outermost runs
 * lie on the setbacks.
 */
export const openSurface = ({ fields }: FieldChain, cable: LayoutCable): number =>
  fields.reduce((sum, { sides }) => {
    const ring = innerRing(sides) ?? [];
    const around = ring.reduce((length, { a, b }) => length + distance(a, b), 0);
    return sum + Math.abs(signedArea(ring.map(({ a }) => a))) + (around * closestSpacing(cable)) / 2;
  }, 0);
