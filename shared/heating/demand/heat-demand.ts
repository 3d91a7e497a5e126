import type { Source } from '../../entry/source.js';
import type { WattsPerSquareFoot } from '../../units/electrical.js';
import { heatFlux, toWattsPerSquareFoot, type HeatFlux } from '../../units/heat.js';
import type { Feet, SquareFeet } from '../../units/length.js';
import type { DesignWeather } from './design-weather.js';
import { slabLosses, EDGE_SOURCE, GROUND_SOURCE } from './losses.js';
import { shortForm, SHORT_FORM_SOURCE } from './short-form.js';
import type { Slab } from './slab.js';
import { BALANCE_SOURCE, surfaceDemand } from './surface-demand.js';

/** The surface whose heat is asked for. */
export interface HeatedSurface {
  readonly area: SquareFeet;
  /** Length in the direction of the wind; the shorter, the more each square foot loses. */
  readonly along: Feet;
  readonly openEdge: Feet;
  readonly slab: Slab;
}

/** What a heated surface asks for, W/ft², part by part; the parts add up to the total. */
export interface HeatDemand {
  readonly sensible: WattsPerSquareFoot;
  readonly melting: WattsPerSquareFoot;
  /** Counted by the free-area ratio already, and the next one too. */
  readonly convectionAndRadiation: WattsPerSquareFoot;
  readonly evaporation: WattsPerSquareFoot;
  readonly back: WattsPerSquareFoot;
  readonly edge: WattsPerSquareFoot;
  readonly total: WattsPerSquareFoot;
  /** What the short form asks at the top, beside the top of the full balance. */
  readonly top: WattsPerSquareFoot;
  readonly topByShortForm: WattsPerSquareFoot;
  readonly freeAreaRatio: number;
  readonly weather: DesignWeather;
  readonly sources: readonly Source[];
}

/** Full balance at the top, back and edge loss, and the short form as a second opinion. */
export function heatDemand(
  surface: HeatedSurface,
  weather: DesignWeather,
  freeAreaRatio: number,
): HeatDemand {
  const top = surfaceDemand(weather, freeAreaRatio, surface.along);
  const edge = { open: surface.openEdge, area: surface.area };
  const losses = slabLosses(top.total, surface.slab, edge, weather.air);
  const bare = (flux: HeatFlux) => toWattsPerSquareFoot(heatFlux(flux * freeAreaRatio));
  return {
    sensible: toWattsPerSquareFoot(top.sensible),
    melting: toWattsPerSquareFoot(top.melting),
    convectionAndRadiation: bare(top.convectionAndRadiation),
    evaporation: bare(top.evaporation),
    back: toWattsPerSquareFoot(losses.back),
    edge: toWattsPerSquareFoot(losses.edge),
    total: toWattsPerSquareFoot(heatFlux(top.total + losses.back + losses.edge)),
    top: toWattsPerSquareFoot(top.total),
    topByShortForm: toWattsPerSquareFoot(shortForm(weather, freeAreaRatio).total),
    freeAreaRatio,
    weather,
    sources: [BALANCE_SOURCE, SHORT_FORM_SOURCE, weather.source, EDGE_SOURCE, GROUND_SOURCE],
  };
}
