import { fromMemory, type Source } from '../../entry/source.js';
import { heatFlux, type HeatFlux } from '../../units/heat.js';
import type { Feet } from '../../units/length.js';
import { demandSnow, type DesignWeather } from './design-weather.js';
import { meltingHeat, sensibleHeat } from './melting-heat.js';
import { convectionAndRadiation, evaporation } from './surface-heat.js';

/** What a surface needs at its top, with the parts that it is made of. */
export interface SurfaceDemand {
  readonly sensible: HeatFlux;
  readonly melting: HeatFlux;
  /** From a bare wet film; counted by the free-area ratio. */
  readonly convectionAndRadiation: HeatFlux;
  readonly evaporation: HeatFlux;
  readonly freeAreaRatio: number;
  readonly total: HeatFlux;
}

/** Where the balance comes from. */
export const BALANCE_SOURCE: Source = fromMemory(
  'ASHRAE Handbook, HVAC Applications, snow melting: q = q_s + q_m + A_r(q_e + q_h)',
);

/** The full balance of a surface of length `along` in the wind. Throws on a ratio outside 0 to 1 or weather without snow. */
export function surfaceDemand(weather: DesignWeather, freeAreaRatio: number, along: Feet): SurfaceDemand {
  demandSnow(weather);
  demandRatio(freeAreaRatio);
  const sensible = sensibleHeat(weather);
  const melting = meltingHeat(weather);
  const open = convectionAndRadiation(weather, along);
  const dried = evaporation(weather, along);
  return {
    sensible,
    melting,
    convectionAndRadiation: open,
    evaporation: dried,
    freeAreaRatio,
    total: heatFlux(sensible + melting + freeAreaRatio * (open + dried)),
  };
}

/** Throws unless a free-area ratio lies from 0 to 1. */
export function demandRatio(ratio: number): void {
  if (!(ratio >= 0 && ratio <= 1)) throw new RangeError(`the free-area ratio is from 0 to 1, got ${ratio}`);
}
