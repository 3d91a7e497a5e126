import type { Inches } from '../../units/length.js';
import { published } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const LIMIT = 1.5;

/** Masonry covers an embedded cable by at least 1½ in. */
export function cableCover(cover: Inches): Finding {
  const ok = cover >= LIMIT - HAIR;
  return {
    rule: 'cable-cover',
    ok,
    measured: say(cover, 'in'),
    limit: `at least ${say(LIMIT, 'in')}`,
    source: published('NEC 426.20'),
    text: ok ? 'Cable is covered enough' : 'Cable is covered too thinly: thicken bed or stone',
    caution: 'Local code and the instructions of the heating set decide.',
  };
}
