import type { Inches } from '../../units/length.js';
import type { FrostDepth } from '../measurement/measurement.js';
import { fromMemory } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

/** The bottom of a footing lies no higher than the local frost depth. */
export function footingFrostDepth(bottom: Inches, frost: FrostDepth): Finding {
  const ok = bottom >= frost.depth - HAIR;
  const short = say(frost.depth - bottom, 'in');
  return {
    rule: 'footing-frost-depth',
    ok,
    measured: say(bottom, 'in'),
    limit: `at least ${say(frost.depth, 'in')}`,
    source: fromMemory(`IRC R403.1.4.1; frost depth by ${frost.source}`),
    text: ok ? 'Footing reaches below frost' : `Footing is ${short} short of frost: dig deeper`,
    caution:
      'Protect the excavation from 5 ft, or less where a competent person sees cause (29 CFR 1926.652).',
  };
}
