import type { Inches } from '../../units/length.js';
import { published } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const LIMIT = 30;

/** Whether a walking surface this high over what lies beside it needs a guard. */
export const guardNeeded = (drop: Inches): boolean => drop > LIMIT + HAIR;

/** Open sides more than 30 in above what lies within 36 in beside them have a guard. */
export function guard(drop: Inches, planned: boolean): Finding {
  const needed = guardNeeded(drop);
  const ok = planned || !needed;
  return {
    rule: 'guard',
    ok,
    measured: `${say(drop, 'in')} drop, ${planned ? 'guard planned' : 'no guard planned'}`,
    limit: `guard over ${say(LIMIT, 'in')}`,
    source: published('IRC R312.1'),
    text: needed
      ? ok
        ? 'Guard is planned'
        : 'Plan a guard at the open sides, and keep the cable 3 to 4 in inside where its posts are drilled'
      : 'No guard is asked for',
    caution: 'Until it stands, keep people off the open side.',
  };
}
