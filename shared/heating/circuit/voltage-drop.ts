import { published } from '../../entry/source.js';
import type { Finding } from '../../entry/rules/finding.js';
import { say } from '../../entry/rules/say.js';
import { HAIR } from '../../entry/rules/spread.js';
import { volts, type Amperes, type OhmsPerFoot, type Volts } from '../../units/electrical.js';
import type { Feet } from '../../units/length.js';

const ADVISED = 0.03;

/** Volts lost there and back: 2·L·I·r. */
export const voltageDrop = (oneWay: Feet, load: Amperes, perFoot: OhmsPerFoot): Volts =>
  volts(2 * oneWay * load * perFoot);

/** Up to 3 % of the voltage may be lost in a branch circuit; advised by the code, not asked. */
export function voltageDropFinding(lost: Volts, supply: Volts): Finding {
  const share = lost / supply;
  const ok = share <= ADVISED + HAIR;
  return {
    rule: 'voltage-drop',
    ok,
    measured: `${say(lost, 'V')}, ${say(share * 100, '%')} of ${say(supply, 'V')}`,
    limit: `at most ${say(ADVISED * 100, '%')}, advised`,
    source: published('NEC 210.19(A), informational note'),
    text: ok
      ? 'Voltage drop is small enough'
      : 'Voltage drop is large: take a larger conductor or a shorter way',
    caution: 'A licensed electrician decides; the heat falls by twice the share that the voltage does.',
  };
}
