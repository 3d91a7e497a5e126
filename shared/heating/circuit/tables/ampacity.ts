import { amperes, type Amperes } from '../../../units/electrical.js';

/** Temperature that the terminals at both ends are rated for, °C; 60 unless they are marked otherwise. */
export type TerminalRating = 60 | 75;

interface CopperSize {
  readonly awg: number;
  readonly at60: number;
  readonly at75: number;
  /** The largest breaker for a small wire, whatever its column says. */
  readonly mostBreaker?: number;
}

/**
 * Copper up to 1 AWG: sizes above have no plain number and belong to a designer. Source: NEC Table 310.16; 240.4(D) for
 * small wire.
 */
const COPPER: readonly CopperSize[] = [
  { awg: 14, at60: 15, at75: 20, mostBreaker: 15 },
  { awg: 12, at60: 20, at75: 25, mostBreaker: 20 },
  { awg: 10, at60: 30, at75: 35, mostBreaker: 30 },
  { awg: 8, at60: 40, at75: 50 },
  { awg: 6, at60: 55, at75: 65 },
  { awg: 4, at60: 70, at75: 85 },
  { awg: 3, at60: 85, at75: 100 },
  { awg: 2, at60: 95, at75: 115 },
  { awg: 1, at60: 110, at75: 130 },
];

const column = (size: CopperSize, terminals: TerminalRating): number =>
  terminals === 60 ? size.at60 : size.at75;

/** Ampacity of a copper conductor at its terminals' rating; null for a size that the table here does not have. */
export function ampacity(awg: number, terminals: TerminalRating): Amperes | null {
  const size = COPPER.find((one) => one.awg === awg);
  return size ? amperes(column(size, terminals)) : null;
}

/** The smallest copper that carries `design` and may stand on `breaker`; null where the table here ends. */
export function conductorFor(design: Amperes, breaker: Amperes, terminals: TerminalRating): number | null {
  const fits = (size: CopperSize) =>
    column(size, terminals) >= design - 1e-9 && breaker <= (size.mostBreaker ?? Infinity);
  return COPPER.find(fits)?.awg ?? null;
}
