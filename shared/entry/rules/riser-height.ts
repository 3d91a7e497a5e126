import type { Inches } from '../../units/length.js';
import { published } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const SOURCE = published('IRC 2018 R311.7.5.1');
const LIMIT = 7.75;

/** A riser is no higher than 7¾ in, measured between finished treads. */
export function riserHeight(riser: Inches): Finding {
  const ok = riser <= LIMIT + HAIR;
  return {
    rule: 'riser-height',
    ok,
    measured: say(riser, 'in'),
    limit: `at most ${say(LIMIT, 'in')}`,
    source: SOURCE,
    text: ok ? 'Riser is low enough' : 'Riser is too high: add a riser or lower the block',
    caution: 'Local amendments override; the authority having jurisdiction decides.',
  };
}
