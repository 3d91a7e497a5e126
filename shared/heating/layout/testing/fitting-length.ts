import { fieldsOf } from '../fields-of.js';
import { Layers } from '../layers.js';
import type { RandomSite } from './random-site.js';

/** Label lengths are drawn for so many spacings from the closest up: to about 1.7 times it. */
const STEPS = 22;

/**
 * A label length, in, inside what the surfaces of an entry take: at a spacing drawn by chance, with as much given up of
 * it as may be or less. `draw` gives numbers from 0 to 1.
 */
export function fittingLength({ plan, areas, cable }: RandomSite, draw: () => number): number {
  const probe = { ...cable, length: 1 };
  const [full, neat] = new Layers(fieldsOf(plan, areas, probe), plan.penetration, probe).standing();
  const layer = draw() < 0.25 ? full! : neat!;
  const steps = Math.min(layer.steps, STEPS);
  // What leaves a gap too wide at some spacing is drawn for the next closer one.
  for (let step = Math.floor(draw() * steps); step >= 0; step--) {
    const spread = layer.spread(step, Infinity);
    if (spread?.servings.every(({ across }) => across <= cable.greatestSpacing - 0.5))
      return spread.full - draw() * (spread.full - spread.least);
  }
  throw new RangeError('no spacing lays the entry');
}
