import type { WattsPerSquareFoot } from '../../units/electrical.js';
import { published } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const LIMIT = 120;

/** Embedded cable gives no more than 120 W per square foot of heated area; the figure per square foot is the limit. */
export function powerDensity(density: WattsPerSquareFoot): Finding {
  const ok = density <= LIMIT + HAIR;
  return {
    rule: 'power-density',
    ok,
    measured: say(density, 'W/ft²'),
    limit: `at most ${say(LIMIT, 'W/ft²')}`,
    source: published('NEC 426.20'),
    text: ok ? 'Power density is right' : 'Too much power for the area: take a smaller set or heat more area',
    caution: 'A licensed electrician and the authority having jurisdiction decide.',
  };
}
