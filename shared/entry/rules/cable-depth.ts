import type { Inches } from '../../units/length.js';
import { TRADE_RULE } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const LIMIT = 2.5;

/** The cable lies no more than about 2½ in under the top, or the heat comes too late. */
export function cableDepth(depth: Inches): Finding {
  const ok = depth <= LIMIT + HAIR;
  return {
    rule: 'cable-depth',
    ok,
    measured: say(depth, 'in'),
    limit: `at most about ${say(LIMIT, 'in')}`,
    source: TRADE_RULE,
    text: ok ? 'Cable lies near enough to the top' : 'Cable lies deep: thin the bed or choose thinner stone',
  };
}
