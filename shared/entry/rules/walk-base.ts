import type { Inches } from '../../units/length.js';
import { published } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const LIMIT = 2;

/** Embedded cable lies on a masonry base at least 2 in thick. */
export function walkBase(thickness: Inches): Finding {
  const ok = thickness >= LIMIT - HAIR;
  return {
    rule: 'walk-base',
    ok,
    measured: say(thickness, 'in'),
    limit: `at least ${say(LIMIT, 'in')}`,
    source: published('NEC 426.20'),
    text: ok ? 'Base is thick enough' : 'Base under the cable is too thin: thicken it',
    caution: 'Local code decides.',
  };
}
