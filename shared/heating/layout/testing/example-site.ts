import type { SitePlan } from '../../../entry/geometry/site-plan.js';
import type { LayoutCable } from '../cable.js';

/**
 * The trade's example: a landing of about 5 by 11 ft with its first step, heated by one set, and a walk beyond them
 * (a rule of the trade, no source). The measures are invented.
 */
export const EXAMPLE_SITE: SitePlan = {
  wall: [
    { x: -24, y: 0 },
    { x: 156, y: 0 },
  ],
  penetration: { x: 8, y: 0 },
  surfaces: [
    {
      kind: 'landing',
      key: 'landing',
      name: 'Landing',
      outline: [
        { x: 0, y: 0 },
        { x: 132, y: 0 },
        { x: 132, y: 60 },
        { x: 0, y: 60 },
      ],
      setback: 3,
      sideSetbacks: { 1: 4, 3: 4 },
      keepOuts: [],
      joints: [],
    },
    {
      kind: 'flight',
      key: 'steps',
      name: 'First step',
      top: [
        { x: 0, y: 60 },
        { x: 132, y: 60 },
      ],
      riserCount: 2,
      riser: 7.25,
      tread: 12,
      nosing: 1,
      setback: 4,
      frontSetback: 3,
      keepOuts: [],
    },
    {
      kind: 'walk',
      key: 'walk',
      name: 'Walk',
      line: [
        { at: { x: 66, y: 72 }, width: 48 },
        { at: { x: 66, y: 200 }, width: 48 },
      ],
      setback: 3,
      keepOuts: [],
      joints: [],
    },
  ],
};

/** A set that the example takes at 3 in or just above. */
export const EXAMPLE_CABLE: LayoutCable = {
  length: 350 * 12,
  watts: 4200,
  leastBend: 1,
  leastSpacing: 3,
  greatestSpacing: 12,
  coldLead: 16 * 12,
};
