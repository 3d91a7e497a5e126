import type { Feet } from '../../units/length.js';
import { published } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const PROTECTED_FROM = 5;

/** How an excavation is kept from burying people: sloped, shored or shielded, or found stable by a competent person. */
export type ExcavationCare = 'protected' | 'found-stable' | 'none';

/** From 5 ft an excavation is protected; below that a competent person's finding of no sign of a cave-in may do. */
export function excavationProtection(depth: Feet, care: ExcavationCare): Finding {
  const deep = depth >= PROTECTED_FROM - HAIR;
  const ok = care === 'protected' || (care === 'found-stable' && !deep);
  return {
    rule: 'excavation-protection',
    ok,
    measured: `${say(depth, 'ft')}, ${care === 'none' ? 'nothing done' : care === 'protected' ? 'protected' : 'found stable'}`,
    limit: `protection from ${say(PROTECTED_FROM, 'ft')}`,
    source: published('29 CFR 1926.652'),
    text: ok
      ? 'The excavation is as it must be'
      : deep
        ? 'Slope, shore or shield it before anyone goes in'
        : 'Have a competent person look at the ground before anyone goes in, or protect it',
    caution: 'Looked at every day and after rain; spoil 2 ft back; a ladder from 4 ft.',
  };
}
