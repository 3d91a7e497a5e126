import { daysToMinutes, days } from '../../units/time.js';
import type { EntryMeasurement } from '../measurement/measurement.js';
import { areaQuantities } from '../quantities/area-quantities.js';
import { jobQuantities } from '../quantities/job-quantities.js';
import { designFindings } from '../rules/design-findings.js';
import type { DraftClearance, EntryPlanDraft } from '../template/draft.js';
import type { EntryTemplate, TemplateClearance } from '../template/template.js';
import { anyFits } from './area-fits.js';
import { draftHookups, draftPhases, draftPlacements } from './draft-phases.js';
import { expandEquipment } from './expand-equipment.js';
import { expandHoldPoints, inspectionsOf } from './expand-hold-points.js';
import { expandLinks } from './expand-links.js';
import { expandPhases } from './expand-phases.js';

/** Choices that neither template nor measurement makes. */
export interface ExpandOptions {
  /** Whether equipment against the cold is planned; it is, unless told otherwise. */
  readonly cold?: boolean;
}

/**
 * A job from its template and its measurement: phases for the job, for each area and for each heating set, with
 * links, hold points, clearances, inspections, equipment, placements and hookups. Equal input gives equal output.
 */
export function expandTemplate(
  template: EntryTemplate,
  measurement: EntryMeasurement,
  { cold = true }: ExpandOptions = {},
): EntryPlanDraft {
  const phases = expandPhases(template, measurement);
  const holdPoints = expandHoldPoints(template.holdPoints, phases, measurement);
  return {
    areas: measurement.areas.map((area, position) => ({
      key: area.key,
      kind: area.kind,
      name: area.name,
      position,
      heated: area.heated,
      quantities: areaQuantities(area, measurement),
    })),
    phases: draftPhases(phases, measurement.heatingSets.length),
    links: expandLinks(template.links, phases),
    holdPoints,
    clearances: template.clearances
      .filter((clearance) => anyFits(measurement.areas, clearance.where))
      .map(draftClearance),
    inspections: inspectionsOf(holdPoints),
    equipmentHolds: expandEquipment(template.equipment, phases, cold),
    placements: draftPlacements(phases, template, measurement),
    heatingSets: measurement.heatingSets,
    hookups: draftHookups(phases),
    quantities: jobQuantities(measurement),
    findings: designFindings(measurement),
  };
}

const draftClearance = ({ key, kind, title, leadDays, lifeDays }: TemplateClearance): DraftClearance => ({
  key,
  kind,
  title,
  leadMinutes: daysToMinutes(days(leadDays)),
  lifeDays,
});
