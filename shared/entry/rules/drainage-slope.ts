import type { Percent } from '../../units/weather-units.js';
import { published } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const LIMIT = 2;

/** What sheds water within 10 ft of the house slopes away from it by at least 2 %. */
export function drainageSlope(slope: Percent): Finding {
  const ok = slope >= LIMIT - HAIR;
  return {
    rule: 'drainage-slope',
    ok,
    measured: say(slope, '%'),
    limit: `at least ${say(LIMIT, '%')} away from the house`,
    source: published('IRC R401.3'),
    text: ok ? 'Water runs away from the house' : 'Water stands or runs to the house: lower the outer edge',
    caution: 'Meltwater freezes where the heat ends: lead it to where nobody walks.',
  };
}
