import { inches, type Inches } from '../../units/length.js';
import { published } from '../source.js';
import { inForce, type Amendment } from './amendment.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const SOURCE = published('IRC 2018 R311.7.5.1');

/** The highest that a riser may be where the place has not amended it. */
export const HIGHEST_RISER = inches(7.75);

/** A riser is no higher than 7¾ in, or than the place's own limit, measured between finished treads. */
export function riserHeight(riser: Inches, amended?: Amendment): Finding {
  const { limit, source } = inForce(HIGHEST_RISER, SOURCE, amended);
  const ok = riser <= limit + HAIR;
  return {
    rule: 'riser-height',
    ok,
    measured: say(riser, 'in'),
    limit: `at most ${say(limit, 'in')}`,
    source,
    text: ok ? 'Riser is low enough' : 'Riser is too high: add a riser or lower the block',
    caution: 'Local amendments override; the authority having jurisdiction decides.',
  };
}
