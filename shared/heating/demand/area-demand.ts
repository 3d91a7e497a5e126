import type { MeasuredArea } from '../../entry/measurement/area.js';
import type { EntryMeasurement } from '../../entry/measurement/measurement.js';
import { areaFaces } from '../../entry/quantities/area-faces.js';
import { toHeatFlux, heatFlux } from '../../units/heat.js';
import type { WattsPerSquareFoot } from '../../units/electrical.js';
import { feet, type Feet } from '../../units/length.js';
import type { Hours } from '../../units/time.js';
import type { DesignWeather } from './design-weather.js';
import { FILM_TEMPERATURE } from './film-temperature.js';
import { heatDemand, type HeatDemand } from './heat-demand.js';
import { openEdge } from './open-edge.js';
import { slabOf } from './slab.js';
import { convection, radiation } from './surface-heat.js';
import { warmUpTime } from './warm-up.js';

/** The shorter side of an area: the wind may blow along it, and then each square foot loses the most. */
export function alongTheWind(area: MeasuredArea): Feet {
  switch (area.kind) {
    case 'landing':
      return feet(Math.min(area.length, area.width) / 12);
    case 'flight':
      return feet(Math.min((area.riserCount - 1) * area.tread, area.width) / 12);
    case 'walk':
      return feet(Math.min(area.length, area.width / 12));
  }
}

/** What an area of a measured entry asks for. */
export const areaDemand = (
  area: MeasuredArea,
  measurement: EntryMeasurement,
  weather: DesignWeather,
  freeAreaRatio: number,
): HeatDemand =>
  heatDemand(
    {
      area: areaFaces(area).top,
      along: alongTheWind(area),
      openEdge: openEdge(area),
      slab: slabOf(area, measurement),
    },
    weather,
    freeAreaRatio,
  );

/** Time until an area, as cold as the air and still dry, reaches 33 °F; null when it never does. */
export function areaWarmUp(
  area: MeasuredArea,
  measurement: EntryMeasurement,
  weather: DesignWeather,
  density: WattsPerSquareFoot,
): Hours | null {
  const film = convection(weather.wind, alongTheWind(area)) * (FILM_TEMPERATURE - weather.air);
  const loss = heatFlux(film + radiation(weather.air));
  return warmUpTime(slabOf(area, measurement), weather.air, toHeatFlux(density), loss);
}
