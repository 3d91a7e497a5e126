import type { EntryMeasurement } from '../measurement/measurement.js';
import { areaQuantities } from '../quantities/area-quantities.js';
import { jobQuantities, setQuantities } from '../quantities/job-quantities.js';
import type { EntryTemplate, TemplatePhase } from '../template/template.js';
import { anyFits, areaFits } from './area-fits.js';
import { setOfArea, type ExpandedPhase } from './expanded-phase.js';

/** Every phase of the job, in the order of the template and then of the measurement. */
export function expandPhases(template: EntryTemplate, measurement: EntryMeasurement): ExpandedPhase[] {
  return template.phases.flatMap((phase) => expandPhase(phase, measurement));
}

function expandPhase(of: TemplatePhase, measurement: EntryMeasurement): ExpandedPhase[] {
  switch (of.scope) {
    case 'job':
      if (!anyFits(measurement.areas, of.where)) return [];
      return [{ key: of.kind, of, area: null, set: null, quantities: jobQuantities(measurement) }];
    case 'area':
      return measurement.areas
        .filter((area) => areaFits(area, of.where))
        .map((area) => ({
          key: `${of.kind}.${area.key}`,
          of,
          area,
          set: setOfArea(measurement, area),
          quantities: areaQuantities(area, measurement),
        }));
    case 'set':
      return measurement.heatingSets.map((set) => ({
        key: `${of.kind}.${set.key}`,
        of,
        area: null,
        set,
        quantities: setQuantities(set),
      }));
  }
}
