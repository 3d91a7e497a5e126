import { COMMON_PRACTICE, fromMemory, type Source } from '../../entry/source.js';
import { heatFlux, type HeatFlux } from '../../units/heat.js';
import type { Feet, SquareFeet } from '../../units/length.js';
import { fahrenheit, type Fahrenheit } from '../../units/temperature.js';
import { FILM_TEMPERATURE } from './film-temperature.js';
import { resistanceOf, type Slab } from './slab.js';

/** Ground under the entry in winter. Common practice, no source. */
export const GROUND_TEMPERATURE = fahrenheit(40);
/** Where the ground's temperature comes from. */
export const GROUND_SOURCE: Source = COMMON_PRACTICE;

/** Heat through a foot of bare edge, Btu/h·ft·°F. */
const EDGE_CONDUCTANCE = 1.35;
/** Where the edge's figure comes from. */
export const EDGE_SOURCE: Source = fromMemory(
  'ASHRAE 90.1, table A6.3: heated slab, edge without insulation',
);

/** What leaves the slab elsewhere than at its top. */
export interface SlabLosses {
  /** Temperature at the cable that drives the heat up, °F. */
  readonly cable: Fahrenheit;
  /** Down into block and ground. */
  readonly back: HeatFlux;
  /** Out of the open edges, spread over the area. */
  readonly edge: HeatFlux;
}

/** Losses of a slab that gives `surface` at its top, steadily. */
export function slabLosses(
  surface: HeatFlux,
  slab: Slab,
  edge: { readonly open: Feet; readonly area: SquareFeet },
  air: Fahrenheit,
): SlabLosses {
  if (!(edge.area > 0)) throw new RangeError(`the heated area must be more than 0 ft², got ${edge.area}`);
  const cable = fahrenheit(FILM_TEMPERATURE + surface * resistanceOf(slab.above));
  return {
    cable,
    back: heatFlux(Math.max(0, (cable - GROUND_TEMPERATURE) / resistanceOf(slab.below))),
    edge: heatFlux((EDGE_CONDUCTANCE * edge.open * Math.max(0, cable - air)) / edge.area),
  };
}
