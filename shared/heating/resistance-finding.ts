import type { Finding } from '../entry/rules/finding.js';
import { fromMemory, published, type Source } from '../entry/source.js';
import type { CableReading } from './cable-reading.js';
import type { HeatingLabel } from './label.js';
import { resistanceAtLabel, resistanceWindow } from './resistance-window.js';

const COMMON: Source = fromMemory('IEC 60800: −5/+10 % of the label at its temperature');
const OWN: Source = published("tolerance stated by the heating set's own label");
const CAUTION = 'De-energise, lock and verify before any test. A meter reading is not leave to energise.';
const HAIR = 1e-9;

/** Whether the resistance lies within the tolerance of the label. */
export function resistanceFinding(label: HeatingLabel, reading: CableReading): Finding {
  const { low, high } = resistanceWindow(label);
  const found = resistanceAtLabel(label, reading);
  const ok = found >= low - HAIR && found <= high + HAIR;
  const common = label.toleranceLow === -0.05 && label.toleranceHigh === 0.1;
  return {
    rule: 'resistance',
    ok,
    measured: `${found.toFixed(2)} Ω at the label's temperature (meter ${reading.ohms} Ω)`,
    limit: `${low.toFixed(2)} to ${high.toFixed(2)} Ω`,
    source: common ? COMMON : OWN,
    text: ok ? 'Resistance agrees with the label' : sayWrong(found < low),
    caution: CAUTION,
  };
}

const sayWrong = (low: boolean): string =>
  low
    ? 'Resistance is too low: look for a short or a shortened cable; check meter, leads and temperature, read again'
    : 'Resistance is too high: look for a break or a bad joint; check meter, leads and temperature, read again';
