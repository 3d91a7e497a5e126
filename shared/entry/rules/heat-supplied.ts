import type { WattsPerSquareFoot } from '../../units/electrical.js';
import type { Source } from '../source.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

/** A set gives each square foot at least the heat that melts the snow it is designed for. */
export function heatSupplied(given: WattsPerSquareFoot, asked: WattsPerSquareFoot, source: Source): Finding {
  const ok = given >= asked - HAIR;
  return {
    rule: 'heat-supplied',
    ok,
    measured: say(given, 'W/ft²'),
    limit: `at least ${say(asked, 'W/ft²')}`,
    source,
    text: ok
      ? 'There is heat enough for the snow it is designed for'
      : `There is ${say(asked - given, 'W/ft²')} too little: take a stronger set, heat less area, or design for less snow`,
    caution: 'Too little heat leaves ice: it is not safer than none.',
  };
}
