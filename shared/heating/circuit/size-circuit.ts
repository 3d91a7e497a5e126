import { published, type Source } from '../../entry/source.js';
import { amperes, type Amperes } from '../../units/electrical.js';
import { conductorFor, type TerminalRating } from './tables/ampacity.js';
import { nextBreaker } from './tables/breakers.js';

/** A circuit as the code sizes it; a licensed electrician decides. */
export interface CircuitSize {
  readonly load: Amperes;
  /** 125 % of the load: fixed outdoor snow-melting is a continuous load. */
  readonly design: Amperes;
  readonly breaker: Amperes;
  readonly conductorAwg: number;
  readonly terminals: TerminalRating;
  readonly source: Source;
  readonly caution: string;
}

/** The least circuit that serves a load, or null above what the tables here reach: an electrician designs that. */
export function sizeCircuit(load: Amperes, terminals: TerminalRating = 60): CircuitSize | null {
  const design = continuousLoad(load);
  const breaker = nextBreaker(design);
  const conductorAwg = breaker === null ? null : conductorFor(design, breaker, terminals);
  if (breaker === null || conductorAwg === null) return null;
  return {
    load,
    design,
    breaker,
    conductorAwg,
    terminals,
    source: published(`NEC 426.4, 310.16 at ${terminals} °C, 240.4(D), 240.6(A)`),
    caution:
      'A licensed electrician sizes the circuit under permit; ground-fault protection of equipment is required.',
  };
}

/** 12 A of continuous load count as 15 A. */
export const continuousLoad = (load: Amperes): Amperes => amperes(load * 1.25);

/** Whether a continuous load may stand on a breaker: 16 A on 15 A may not. */
export const breakerCarries = (load: Amperes, breaker: Amperes): boolean =>
  continuousLoad(load) <= breaker + 1e-9;
