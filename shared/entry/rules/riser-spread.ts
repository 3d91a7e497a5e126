import type { Inches } from '../../units/length.js';
import { published } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR, spread } from './spread.js';

const SOURCE = published('IRC 2018 R311.7.5.1');
const LIMIT = 0.375;

/** Within a flight the highest riser is no more than ⅜ in higher than the lowest. */
export function riserSpread(risers: readonly Inches[]): Finding {
  const found = spread(risers);
  const ok = found <= LIMIT + HAIR;
  return {
    rule: 'riser-spread',
    ok,
    measured: say(found, 'in'),
    limit: `at most ${say(LIMIT, 'in')}`,
    source: SOURCE,
    text: ok
      ? 'Risers are equal enough'
      : 'Risers are uneven: set the block so that every finished riser is equal',
    caution: 'An uneven riser trips people; count stone and bed at top and bottom.',
  };
}
