import { COMMON_PRACTICE, type Source } from '../entry/source.js';
import { psi, toMegapascals } from '../units/stress.js';
import { hours } from '../units/time.js';
import type { AgeMethodChoice } from './age-method.js';
import type { StrengthCurve } from './strength-curve.js';

/** A mixture as its strength is estimated; data that a company edits. */
export interface Mixture {
  readonly name: string;
  /** Strength it tends to, psi. */
  readonly ultimatePsi: number;
  /** Characteristic time of the curve, h at 20 °C. */
  readonly tauHours: number;
  readonly exponent: number;
  /** A hyperbolic curve in place of the exponential one, where the supplier gives that. */
  readonly hyperbolic?: { readonly kPerHour: number; readonly startHours: number } | null;
  /** How its age is counted, where it was tested for that; the cautious pair when left out. */
  readonly age?: AgeMethodChoice;
  /** Whether an accelerator is in it; left out, none is. */
  readonly accelerated?: boolean;
  /** Cement, lb/yd³, for the heat it sets free; 500 when left out. */
  readonly cementLbPerYd3?: number;
  readonly source: Source;
}

/** The strength curve of a mixture. */
export const curveOf = ({ ultimatePsi, tauHours, exponent }: Mixture): StrengthCurve => ({
  ultimate: toMegapascals(psi(ultimatePsi)),
  tau: hours(tauHours),
  exponent,
});

const plain = { tauHours: 30, exponent: 0.8, source: COMMON_PRACTICE } as const;

/** Mixtures a company starts from, by what a phase places. The supplier's own curve goes first. */
export const DEFAULT_MIXTURES: Readonly<Record<'concrete' | 'grout' | 'mortar', Mixture>> = {
  concrete: { name: 'Concrete, 4,000 psi', ultimatePsi: 4600, ...plain },
  grout: { name: 'Masonry grout, 2,500 psi', ultimatePsi: 2900, ...plain },
  mortar: { name: 'Mortar, 1,800 psi', ultimatePsi: 2100, ...plain },
};
