import { sizeCircuit } from '../../shared/heating/circuit/size-circuit.js';
import { amperes } from '../../shared/units/electrical.js';
import type { HeatingSet } from '../generated/prisma/client.js';
import type { Circuit } from './circuit.model.js';

/** The circuit that a set's label asks for; a licensed electrician decides. */
export function circuitOf({ watts, volts }: Pick<HeatingSet, 'watts' | 'volts'>): Circuit {
  const load = amperes(watts / volts);
  const size = sizeCircuit(load);
  const drawn = `${watts} W at ${volts} V draw ${load.toFixed(1)} A`;
  return {
    watts,
    volts,
    amperes: load,
    breakerAmperes: size?.breaker ?? null,
    text: size
      ? `${drawn}; as a continuous load ${size.design.toFixed(1)} A: a ${size.breaker} A breaker, ${size.conductorAwg} AWG copper at least. ${size.caution}`
      : `${drawn}: more than the tables here reach. A licensed electrician designs the circuit.`,
    source: size?.source.text ?? 'NEC 426.4',
  };
}
