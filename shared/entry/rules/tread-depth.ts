import { inches, type Inches } from '../../units/length.js';
import { published } from '../source.js';
import { inForce, type Amendment } from './amendment.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const SOURCE = published('IRC 2018 R311.7.5.2');
const LIMIT = inches(10);

/** A tread is at least 10 in deep, or as the place's own limit has it, nosing to nosing. */
export function treadDepth(tread: Inches, amended?: Amendment): Finding {
  const { limit, source } = inForce(LIMIT, SOURCE, amended);
  const ok = tread >= limit - HAIR;
  return {
    rule: 'tread-depth',
    ok,
    measured: say(tread, 'in'),
    limit: `at least ${say(limit, 'in')}`,
    source,
    text: ok ? 'Tread is deep enough' : 'Tread is too shallow: lengthen the flight',
    caution: 'Local amendments override; the authority having jurisdiction decides.',
  };
}
