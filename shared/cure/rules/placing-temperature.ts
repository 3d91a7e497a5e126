import type { Finding } from '../../entry/rules/finding.js';
import type { Inches } from '../../units/length.js';
import type { Fahrenheit } from '../../units/temperature.js';
import { sectionLimits, SECTION_TABLE_SOURCE } from './section-table.js';

/** Concrete must be placed, and kept, no colder than its section asks: 55 °F under 12 in. */
export function placingTemperature(least: Inches, concrete: Fahrenheit): Finding {
  const { placed } = sectionLimits(least);
  const ok = concrete >= placed;
  return {
    rule: 'placing-temperature',
    ok,
    measured: `${concrete} °F`,
    limit: `at least ${placed} °F for a section of ${least} in`,
    source: SECTION_TABLE_SOURCE,
    text: ok
      ? 'Warm enough as placed'
      : `Too cold to place: ask the plant for warmer concrete, at least ${placed} °F as placed`,
  };
}
