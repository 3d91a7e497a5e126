import { TRADE_RULE } from '../source.js';
import type { Finding } from './finding.js';

/** The cold lead may be cut; the heating cable never. */
export function uncutCable(uncut: boolean): Finding {
  return {
    rule: 'uncut-cable',
    ok: uncut,
    measured: uncut ? 'uncut' : 'cut',
    limit: 'uncut',
    source: TRADE_RULE,
    text: uncut
      ? 'Heating cable is whole'
      : 'The heating cable was cut: its power and resistance no longer hold. Replace the set; do not join it',
    caution: 'Never energise a heating cable that was cut.',
  };
}
