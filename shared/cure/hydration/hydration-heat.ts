import { fromMemory, type Source } from '../../entry/source.js';
import { celsius } from '../../units/temperature.js';
import { arrheniusRate, type AgeRate } from '../equivalent-age.js';
import type { Hydration } from './hydration.js';

/** Heat that a mixture sets free while it hardens. */
export interface HydrationHeat {
  readonly hydration: Hydration;
  /** Heat of complete hydration, J per kg of cement. */
  readonly potential: number;
  /** Cement, kg/m³. */
  readonly cement: number;
  /** How the speed follows the temperature. */
  readonly rate: AgeRate;
}

/** Heat of complete hydration in J/m³. */
export const heatPerVolume = ({ potential, cement }: HydrationHeat): number => potential * cement;

/**
 * Heat of an ordinary mixture with 300 kg/m³ of cement. Slow on purpose: heat that comes late and sparse is the
 * cautious assumption in the cold. An accelerator brings the heat earlier by `speed`; it makes no more of it.
 */
export const ordinaryHeat = (cement: number, speed = 1): HydrationHeat => ({
  hydration: { ultimate: 0.7, tauHours: 16 / speed, exponent: 0.9 },
  potential: 450_000,
  cement,
  rate: arrheniusRate(5000, celsius(20)),
});

/** Where the ordinary figures come from. */
export const ORDINARY_HEAT_SOURCE: Source = fromMemory(
  'ordinary portland cement: 450 kJ/kg, 300 kg/m³ of concrete, hydration 0.7 at most',
);
