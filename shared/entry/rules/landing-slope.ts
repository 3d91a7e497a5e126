import type { Percent } from '../../units/weather-units.js';
import { published } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const LIMIT = 2;

/** A landing at a door slopes no more than 2 %. */
export function landingSlope(slope: Percent): Finding {
  const ok = slope <= LIMIT + HAIR;
  return {
    rule: 'landing-slope',
    ok,
    measured: say(slope, '%'),
    limit: `at most ${say(LIMIT, '%')}`,
    source: published('IRC R311.3'),
    text: ok ? 'Landing is level enough' : 'Landing slopes too much: raise its outer edge',
    caution: 'Together with the drainage rule this leaves 2 % and nothing else: set it with a level.',
  };
}
