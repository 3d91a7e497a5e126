import type { Finding } from '../entry/rules/finding.js';
import { fromMemory } from '../entry/source.js';
import type { CableReading } from './cable-reading.js';
import type { HeatingLabel } from './label.js';

const SOURCE = fromMemory('IEEE 515.1, published in part; 20 MΩ unless the set asks for more');
const CAUTION = 'The test voltage can hurt: keep people off the leads, discharge the cable afterwards.';

/** Whether the insulation is good, tested at no less than the voltage that the set's instructions give. */
export function insulationFinding(label: HeatingLabel, reading: CableReading): Finding {
  const enoughVolts = reading.testVolts >= label.insulationTestVolts;
  const enough = reading.megaohms >= label.minInsulation;
  return {
    rule: 'insulation',
    ok: enough && enoughVolts,
    measured: `${reading.megaohms} MΩ at ${reading.testVolts} V`,
    limit: `at least ${label.minInsulation} MΩ at ${label.insulationTestVolts} V or more`,
    source: SOURCE,
    text: !enoughVolts
      ? `Tested at too low a voltage: test again at ${label.insulationTestVolts} V`
      : enough
        ? 'Insulation is good'
        : 'Insulation is damaged or damp: do not cover; find the place, dry or repair by its instructions, test again',
    caution: CAUTION,
  };
}
