import { inches, type Inches } from '../../units/length.js';
import { published } from '../source.js';
import { inForce, type Amendment } from './amendment.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const SOURCE = published('IRC R311.3');
const LIMIT = inches(36);

/** A landing at a door is at least 36 in deep in the direction of travel. */
export function landingDepth(depth: Inches, amended?: Amendment): Finding {
  const { limit, source } = inForce(LIMIT, SOURCE, amended);
  const ok = depth >= limit - HAIR;
  return {
    rule: 'landing-depth',
    ok,
    measured: say(depth, 'in'),
    limit: `at least ${say(limit, 'in')}`,
    source,
    text: ok ? 'Landing is deep enough' : 'Landing is too shallow: build it further out',
    caution: 'It is also at least as wide as the door; the authority having jurisdiction decides.',
  };
}
