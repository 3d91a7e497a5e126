import { heatFlux, type HeatFlux } from '../../units/heat.js';
import type { DesignWeather } from './design-weather.js';
import { FILM_TEMPERATURE, MELTING_TEMPERATURE } from './film-temperature.js';

/** Water, lb/ft³. */
const WATER_DENSITY = 62.4;
/** Specific heats, Btu/lb·°F. */
const ICE_HEAT = 0.49;
const WATER_HEAT = 1;
/** Heat that melts a pound of ice, Btu/lb. */
const FUSION = 143.3;

/** Snow as water, lb/h·ft². */
const fallingMass = ({ snow }: DesignWeather): number => (WATER_DENSITY * snow) / 12;

/** q_s: warms the snow to 32 °F and its water to the film's 33 °F. */
export function sensibleHeat(weather: DesignWeather): HeatFlux {
  const asIce = ICE_HEAT * (MELTING_TEMPERATURE - Math.min(weather.air, MELTING_TEMPERATURE));
  const asWater = WATER_HEAT * (FILM_TEMPERATURE - MELTING_TEMPERATURE);
  return heatFlux(fallingMass(weather) * (asIce + asWater));
}

/** q_m: melts the snow. 0.10 in/h of water takes 74.5 Btu/h·ft². */
export const meltingHeat = (weather: DesignWeather): HeatFlux => heatFlux(fallingMass(weather) * FUSION);
