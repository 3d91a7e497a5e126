import { conductance, heatFlux, type Conductance, type HeatFlux } from '../../units/heat.js';
import type { Feet } from '../../units/length.js';
import type { Fahrenheit } from '../../units/temperature.js';
import type { MilesPerHour } from '../../units/weather-units.js';
import type { DesignWeather } from './design-weather.js';
import { FILM_TEMPERATURE } from './film-temperature.js';
import { humidityRatio } from './saturation-pressure.js';

// Air near the film, from memory (ASHRAE, snow melting): Btu/h·ft·°F, ft²/h, lb/ft³, Btu/lb·°F, Prandtl, Schmidt.
const AIR_CONDUCTIVITY = 0.0135;
const AIR_VISCOSITY = 0.49;
const AIR_DENSITY = 0.0803;
const AIR_HEAT = 0.24;
const PRANDTL = 0.7;
const SCHMIDT = 0.6;
/** Heat that evaporates a pound of water at the film, Btu/lb. */
const EVAPORATION_HEAT = 1075;
/** Stefan and Boltzmann, Btu/h·ft²·°R⁴, and how well a wet surface radiates. */
const RADIATION = 0.1712e-8;
const EMITTANCE = 0.9;
/** Clouds that snow are this much colder than the air below, °F. Source: ASHRAE, snow melting; from memory. */
const CLOUD_BELOW_AIR = 19.2;
const RANKINE = 459.67;
const FEET_PER_MILE = 5280;

/** Film of turbulent air along a surface of a length in the wind: h = 0.037·(k/L)·Re^0.8·Pr^⅓. */
export function convection(wind: MilesPerHour, along: Feet): Conductance {
  if (!(along > 0)) throw new RangeError(`the length along the wind must be more than 0 ft, got ${along}`);
  const reynolds = (wind * FEET_PER_MILE * along) / AIR_VISCOSITY;
  return conductance(0.037 * (AIR_CONDUCTIVITY / along) * reynolds ** 0.8 * Math.cbrt(PRANDTL));
}

/** Radiation from the film to clouds that snow. */
export function radiation(air: Fahrenheit): HeatFlux {
  const film = (FILM_TEMPERATURE + RANKINE) ** 4;
  const clouds = (air - CLOUD_BELOW_AIR + RANKINE) ** 4;
  return heatFlux(RADIATION * EMITTANCE * (film - clouds));
}

/** q_h: from the bare wet film to the air and to the clouds. */
export const convectionAndRadiation = ({ air, wind }: DesignWeather, along: Feet): HeatFlux =>
  heatFlux(convection(wind, along) * (FILM_TEMPERATURE - air) + radiation(air));

/** q_e: evaporation from the bare wet film, by the likeness of heat and mass: h_m = h_c/(ρ·c)·(Pr/Sc)^⅔. */
export function evaporation({ dewPoint, wind }: DesignWeather, along: Feet): HeatFlux {
  const massTransfer = (convection(wind, along) / (AIR_DENSITY * AIR_HEAT)) * (PRANDTL / SCHMIDT) ** (2 / 3);
  const dried = humidityRatio(FILM_TEMPERATURE) - humidityRatio(dewPoint);
  return heatFlux(AIR_DENSITY * massTransfer * dried * EVAPORATION_HEAT);
}
