import { inches, type Inches } from '../../units/length.js';
import { fromMemory } from '../source.js';
import { inForce, type Amendment } from './amendment.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

const SOURCE = fromMemory('IRC R311.3.1');

/** A landing's finished top lies at most 7¾ in under the sill where the door does not swing over it, else at most 1½ in. */
export function doorDrop(drop: Inches, swingsOver: boolean, amended?: Amendment): Finding {
  const { limit, source } = inForce(inches(swingsOver ? 1.5 : 7.75), SOURCE, amended);
  const tooDeep = drop > limit + HAIR;
  const above = drop < 0;
  return {
    rule: 'door-drop',
    ok: !tooDeep && !above,
    measured: say(drop, 'in'),
    limit: `0 to ${say(limit, 'in')}`,
    source,
    text: above
      ? `Landing stands ${say(Math.abs(drop), 'in')} above the sill: lower the block or thin the layers`
      : tooDeep
        ? `Landing lies ${say(drop - limit, 'in')} too deep under the sill: raise the block`
        : 'Landing lies right under the sill',
    caution: 'Keep the flashing of the sill free; water must not find a way in.',
  };
}
