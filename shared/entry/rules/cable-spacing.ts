import type { Inches } from '../../units/length.js';
import { TRADE_RULE } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

/** The trade's limits of spacing on centres, in. */
export const [LEAST_SPACING, MOST_SPACING] = [3, 12];

/** Heating cable lies 3 in on centres at least and 12 in at most. */
export function cableSpacing(spacing: Inches): Finding {
  const tight = spacing < LEAST_SPACING - HAIR;
  const wide = spacing > MOST_SPACING + HAIR;
  return {
    rule: 'cable-spacing',
    ok: !tight && !wide,
    measured: say(spacing, 'in'),
    limit: `${LEAST_SPACING} to ${say(MOST_SPACING, 'in')}`,
    source: TRADE_RULE,
    text: tight
      ? 'Cable is too close: take a shorter set or heat more area; never cut the heating cable'
      : wide
        ? 'Cable is too far apart: take a longer set'
        : 'Spacing is right',
    caution: 'The set may ask for more than the trade does; its instructions go first.',
  };
}
