import { inches } from '../../units/length.js';
import type { EntryMeasurement } from '../measurement/measurement.js';
import { planRisers, type RiserPlan } from '../risers/riser-plan.js';

/**
 * Risers of an entry with one flight or none, from the sill down; null where its heights are not given, or where several
 * flights share the rise and a person has to say how. The walk is taken for grade.
 */
export function risersOfEntry({ areas, buildUp, footing, design }: EntryMeasurement): RiserPlan | null {
  const { heights } = design;
  const flights = areas.filter((area) => area.kind === 'flight');
  if (!heights || !footing || flights.length > 1) return null;
  const layers = inches(buildUp.bed + buildUp.stone);
  const [flight] = flights;
  return planRisers({
    ...heights,
    walk: inches(0),
    footingTop: inches(footing.thickness - footing.bottom),
    treadBuildUp: layers,
    walkBuildUp: layers,
    ...(flight ? { count: flight.riserCount } : {}),
  });
}
