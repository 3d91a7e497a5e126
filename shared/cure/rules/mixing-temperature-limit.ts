import type { Finding } from '../../entry/rules/finding.js';
import type { Inches } from '../../units/length.js';
import type { Fahrenheit } from '../../units/temperature.js';
import { asMixed, SECTION_TABLE_SOURCE } from './section-table.js';

/** Concrete must be mixed the warmer the colder the air, so that it arrives warm enough. */
export function mixingTemperatureLimit(least: Inches, air: Fahrenheit, mixed: Fahrenheit): Finding {
  const limit = asMixed(least, air);
  const ok = mixed >= limit;
  return {
    rule: 'mixing-temperature',
    ok,
    measured: `${mixed} °F as mixed`,
    limit: `at least ${limit} °F as mixed for a section of ${least} in in air at ${air} °F`,
    source: SECTION_TABLE_SOURCE,
    text: ok ? 'Mixed warm enough' : `Order it at ${limit} °F or more as mixed, or wait for warmer air`,
  };
}
