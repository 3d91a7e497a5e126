import { areaDemand, areaWarmUp } from '../../heating/demand/area-demand.js';
import { freeAreaRatio } from '../../heating/demand/free-area.js';
import type { HeatDemand } from '../../heating/demand/heat-demand.js';
import { powerDensity, type WattsPerSquareFoot } from '../../units/electrical.js';
import type { Hours } from '../../units/time.js';
import type { EntryMeasurement } from '../measurement/measurement.js';
import { setSquareFeet } from '../quantities/cable-share.js';
import type { Finding } from '../rules/finding.js';
import { heatSupplied } from '../rules/heat-supplied.js';

/** What a heated area asks for and what its set gives it. */
export interface AreaHeat {
  readonly areaKey: string;
  readonly areaName: string;
  readonly demand: HeatDemand;
  readonly given: WattsPerSquareFoot;
  /** From the design air, cold and dry; null when the set never brings it to 33 °F. */
  readonly warmUp: Hours | null;
  readonly finding: Finding;
}

/** The heat of every heated area under the design snowfall; nothing where no snowfall is given. */
export function heatOfEntry(measurement: EntryMeasurement): AreaHeat[] {
  const { weather, freeAreaClass } = measurement.design;
  if (!weather) return [];
  return measurement.areas.flatMap((area) => {
    const set = measurement.heatingSets.find((one) => one.areas.includes(area.key));
    if (!area.heated || !set) return [];
    const demand = areaDemand(area, measurement, weather, freeAreaRatio(freeAreaClass));
    const given = powerDensity(set.watts, setSquareFeet(set, measurement));
    return [
      {
        areaKey: area.key,
        areaName: area.name,
        demand,
        given,
        warmUp: areaWarmUp(area, measurement, weather, given),
        finding: heatSupplied(given, demand.total, demand.sources[0]!),
      },
    ];
  });
}
