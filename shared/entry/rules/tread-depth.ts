import type { Inches } from '../../units/length.js';
import { published } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const SOURCE = published('IRC 2018 R311.7.5.2');
const LIMIT = 10;

/** A tread is at least 10 in deep, nosing to nosing. */
export function treadDepth(tread: Inches): Finding {
  const ok = tread >= LIMIT - HAIR;
  return {
    rule: 'tread-depth',
    ok,
    measured: say(tread, 'in'),
    limit: `at least ${say(LIMIT, 'in')}`,
    source: SOURCE,
    text: ok ? 'Tread is deep enough' : 'Tread is too shallow: lengthen the flight',
    caution: 'Local amendments override; the authority having jurisdiction decides.',
  };
}
