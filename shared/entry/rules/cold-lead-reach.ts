import { feet, type Feet, type Inches } from '../../units/length.js';
import { fromMemory } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

/** Free length in the box, in. */
const FREE = 6;

/** A cold lead reaches from the cold joint through the sleeve to the box, with 6 in free there. */
export function coldLeadReach(label: Feet, outside: Inches, run: Feet): Finding {
  const asked = feet(Math.ceil(((outside + FREE) / 12 + run) * 100 - HAIR) / 100);
  const ok = label >= asked - HAIR;
  return {
    rule: 'cold-lead-reach',
    ok,
    measured: say(label, 'ft'),
    limit: `at least ${say(asked, 'ft')}: ${say(Math.round(outside * 10) / 10, 'in')} outside, ${say(run, 'ft')} inside, ${FREE} in free`,
    source: fromMemory('NEC 300.14, free conductor at a box'),
    text: ok
      ? 'The cold lead reaches the box'
      : 'The cold lead is too short: order a longer one, or set the box nearer',
    caution:
      'A lead is lengthened only in a box that stays open to reach, by a licensed electrician; the heating cable never.',
  };
}
