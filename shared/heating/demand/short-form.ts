import { fromMemory, type Source } from '../../entry/source.js';
import { heatFlux } from '../../units/heat.js';
import { demandSnow, type DesignWeather } from './design-weather.js';
import { FILM_TEMPERATURE, MELTING_TEMPERATURE } from './film-temperature.js';
import { saturationPressure } from './saturation-pressure.js';
import { demandRatio, type SurfaceDemand } from './surface-demand.js';

/** Where the short form comes from. */
export const SHORT_FORM_SOURCE: Source = fromMemory('Chapman, design of snow melting systems, 1952 and 1956');

/** Pa to the inch of mercury. */
const PASCALS_PER_INCH = 3386.389;
/** Pressure of vapour at the film, inHg, as the form has it. */
const FILM_VAPOUR = 0.185;
/** Heat of evaporation at the film, Btu/lb. */
const EVAPORATION_HEAT = 1075;

/** The short form by wind alone, a second opinion on the full balance: it knows no length of the surface and no clouds. */
export function shortForm(weather: DesignWeather, freeAreaRatio: number): SurfaceDemand {
  demandSnow(weather);
  demandRatio(freeAreaRatio);
  const { air, dewPoint, wind, snow } = weather;
  const byWind = 0.0201 * wind + 0.055;
  const vapour = saturationPressure(dewPoint) / PASCALS_PER_INCH;
  const sensible = heatFlux(2.6 * snow * Math.max(0, MELTING_TEMPERATURE - air));
  const melting = heatFlux(746 * snow);
  const evaporation = heatFlux(Math.max(0, EVAPORATION_HEAT * byWind * (FILM_VAPOUR - vapour)));
  const convectionAndRadiation = heatFlux(11.4 * byWind * (FILM_TEMPERATURE - air));
  return {
    sensible,
    melting,
    convectionAndRadiation,
    evaporation,
    freeAreaRatio,
    total: heatFlux(sensible + melting + freeAreaRatio * (evaporation + convectionAndRadiation)),
  };
}
