import { fromFinish, startForFinish, toFinish } from './link-lag.js';
import type { Link } from './model.js';
import type { Placement } from './outcome.js';
import type { Edge } from './problem.js';
import { slot, type Slot } from './slot.js';

/** A successor beyond its greatest lag. */
export interface Overrun {
  /** By how many slots, in the time the lag is counted in. */
  readonly by: number;
  /** The predecessor's end point (its start or its finish) that would just do; null when the calendar has none. */
  readonly wanted: Slot | null;
}

/**
 * Whether a successor comes too long after its predecessor.
 * @param edge has a greatest lag
 * @returns undefined when it is kept
 */
export function overrun({ link }: Edge, from: Placement, to: Placement): Overrun | undefined {
  const mostLag = link.mostLag!;
  const sooner = fromFinish(link.kind) ? from.finish : from.start;
  const later = toFinish(link.kind) ? to.finish : to.start;
  if (mostLagIn(link) === 'elapsed') {
    const by = later - sooner - mostLag;
    return by > 0 ? { by, wanted: slot(later - mostLag) } : undefined;
  }
  const { own } = to.hours;
  const by = own.worked(later) - own.worked(sooner) - mostLag;
  return by > 0 ? { by, wanted: own.reach(own.worked(later) - mostLag) } : undefined;
}

/** How a greatest lag is counted. */
export function mostLagIn(link: Link): 'working' | 'elapsed' {
  return link.mostLagIn ?? link.lagIn;
}

/** Earliest start of a predecessor with which its end point comes at `wanted`. */
export function startForPoint({ link, from }: Edge, placed: Placement, wanted: Slot): Slot {
  return fromFinish(link.kind) ? startForFinish(from, placed.hours, wanted) : wanted;
}
