import { published, type Source } from '../entry/source.js';
import { amperes, type Amperes } from '../units/electrical.js';

/** Standard breakers up to 100 A. Source: NEC 240.6(A), from memory. */
const BREAKERS = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100] as const;

/** Copper conductors by size with their ampacity in the 60 °C column. Source: NEC Table 310.16. */
const COPPER_60 = [
  { awg: 14, ampacity: 15 },
  { awg: 12, ampacity: 20 },
  { awg: 10, ampacity: 30 },
  { awg: 8, ampacity: 40 },
  { awg: 6, ampacity: 55 },
] as const;

/** A circuit as the code sizes it; a licensed electrician decides. */
export interface CircuitSize {
  readonly load: Amperes;
  /** 125 % of the load: fixed outdoor snow-melting is a continuous load. */
  readonly design: Amperes;
  readonly breaker: Amperes;
  readonly conductorAwg: number;
  readonly source: Source;
  readonly caution: string;
}

/** The least circuit that serves a load, or null above what the tables here reach: an electrician designs that. */
export function sizeCircuit(load: Amperes): CircuitSize | null {
  const design = continuousLoad(load);
  const breaker = nextBreaker(design);
  const conductor = COPPER_60.find((size) => size.ampacity >= design);
  if (breaker === null || conductor === undefined) return null;
  return {
    load,
    design,
    breaker,
    conductorAwg: conductor.awg,
    source: published('NEC 426.4, 310.16 at 60 °C, 240.6(A)'),
    caution:
      'A licensed electrician sizes the circuit under permit; ground-fault protection of equipment is required.',
  };
}

/** 12 A of continuous load count as 15 A. */
export const continuousLoad = (load: Amperes): Amperes => amperes(load * 1.25);

/** The next standard breaker that is no smaller; null past 100 A. */
export function nextBreaker(design: Amperes): Amperes | null {
  const size = BREAKERS.find((rating) => rating >= design - 1e-9);
  return size === undefined ? null : amperes(size);
}

/** Whether a continuous load may stand on a breaker: 16 A on 15 A may not. */
export const breakerCarries = (load: Amperes, breaker: Amperes): boolean =>
  continuousLoad(load) <= breaker + 1e-9;
