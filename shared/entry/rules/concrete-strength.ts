import type { Psi } from '../../units/stress.js';
import type { Percent } from '../../units/weather-units.js';
import { exposedConcrete, type Weathering } from '../footing/exposed-concrete.js';
import type { Finding } from './finding.js';
import { say } from './say.js';
import { HAIR } from './spread.js';

/** Concrete of steps and landings in the weather has the strength and the air that the weathering of the place asks for. */
export function concreteStrength(strength: Psi, air: Percent, weathering: Weathering): Finding {
  const asked = exposedConcrete(weathering);
  const strong = strength >= asked.strength - HAIR;
  const airy = asked.air === null || (air >= asked.air.least - HAIR && air <= asked.air.most + HAIR);
  return {
    rule: 'concrete-strength',
    ok: strong && airy,
    measured: `${say(strength, 'psi')}, air ${say(air, '%')}`,
    limit: `at least ${say(asked.strength, 'psi')}${asked.air ? `, air ${asked.air.least} to ${say(asked.air.most, '%')}` : ''}`,
    source: asked.source,
    text: !strong
      ? 'Concrete is too weak for the weathering here: order the stronger mixture'
      : airy
        ? 'Concrete suits the weathering here'
        : 'Air in the concrete is outside its limits: have the mixture put right; de-icing breaks it otherwise',
    caution: 'The supplier states strength and air on the ticket; test the air where the truck stands.',
  };
}
