import type { HeatingSet } from '../../generated/prisma/client.js';
import { describeSource } from '../../../shared/entry/source.js';
import { sizeCircuit } from '../../../shared/heating/circuit/size-circuit.js';
import { amperes } from '../../../shared/units/electrical.js';
import type { Fact } from '../message.js';

/** The circuit of a heating set for a message: what its label says and the least breaker by the code. */
export function circuitFacts({ watts, volts }: Pick<HeatingSet, 'watts' | 'volts'>): Fact[] {
  const load = watts / volts;
  const size = sizeCircuit(amperes(load));
  return [
    { label: 'Circuit', value: `${watts} W, ${volts} V, ${load.toFixed(1)} A` },
    {
      label: 'Breaker',
      value: size
        ? `${size.breaker} A at least for a continuous load of ${size.design.toFixed(1)} A (${describeSource(size.source)}); the electrician sizes the circuit`
        : 'above the tables here; the electrician designs the circuit',
    },
  ];
}
