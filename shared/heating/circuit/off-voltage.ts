import type { Finding } from '../../entry/rules/finding.js';
import { say } from '../../entry/rules/say.js';
import { HAIR } from '../../entry/rules/spread.js';
import { COMMON_PRACTICE } from '../../entry/source.js';
import { watts, type Volts, type Watts } from '../../units/electrical.js';
import { offVoltagePower } from './power.js';

/** How far the supply's nominal voltage may lie from the set's. Common practice, no source. */
const TOLERANCE = 0.05;

/** A set gives its power on its own voltage only: a 240 V set on 208 V gives three quarters, a 208 V set on 240 V burns. */
export function offVoltage(set: { readonly watts: Watts; readonly volts: Volts }, supply: Volts): Finding {
  const given = offVoltagePower(set.watts, set.volts, supply);
  const share = supply / set.volts - 1;
  const ok = Math.abs(share) <= TOLERANCE + HAIR;
  const gives = `gives ${say(watts(Math.round(given)), 'W')} instead of ${say(set.watts, 'W')}`;
  return {
    rule: 'off-voltage',
    ok,
    measured: say(supply, 'V'),
    limit: `${say(set.volts, 'V')} within 5 %`,
    source: COMMON_PRACTICE,
    text: ok
      ? "Supply is of the set's voltage"
      : share < 0
        ? `On ${say(supply, 'V')} the set ${gives}: too little heat. Take a set for ${say(supply, 'V')}`
        : `On ${say(supply, 'V')} the set ${gives}: it overheats. Do not connect it; take a set for ${say(supply, 'V')}`,
    caution:
      'Read the voltage off the panel and off the label before the set is ordered and again before the hookup.',
  };
}
