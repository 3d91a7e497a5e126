import type { DesignedEntry } from '../entry/design/design-entry.js';
import type { SectionFacts } from './entry-section.js';

/** How far stone stands out where no plan says so, in. Common practice, no source. */
const USUAL_NOSING = 1;

/**
 * The section of a designed entry with one landing and at most one flight below it; null where there is no landing, where it
 * lies on the walk's level, or where several would need a section each.
 */
export function sectionFactsOf(designed: DesignedEntry): SectionFacts | null {
  const { measurement, risers, sets } = designed;
  const { areas, buildUp, footing, frost, sitePlan } = measurement;
  const landings = areas.filter((area) => area.kind === 'landing');
  const flights = areas.filter((area) => area.kind === 'flight');
  const [landing] = landings;
  const [flight] = flights;
  if (!landing || !footing || landings.length > 1 || flights.length > 1 || landing.height <= 0) return null;
  const surface = sitePlan?.surfaces.find((one) => one.kind === 'flight');
  const heights = flight ? Array.from({ length: flight.riserCount }, () => flight.riser) : [landing.height];
  const steps = risers && risers.count > 0 ? risers.steps.map(({ riser }) => riser) : heights;
  const fields = sets.flatMap(({ layout, instead }) => (layout ?? instead?.layout)?.measure.fields ?? []);
  const onLanding = fields.find((field) => field.areaKey === landing.key);
  return {
    landing: landing.length,
    riserCount: steps.length,
    risers: steps,
    tread: flight?.tread ?? 0,
    nosing: surface?.kind === 'flight' ? surface.nosing : USUAL_NOSING,
    bed: buildUp.bed,
    stone: buildUp.stone,
    walkBase: buildUp.walkBase,
    footing,
    frostDepth: frost.depth,
    cableSpacing: landing.heated ? (onLanding?.meanSpacing ?? USUAL_SPACING) : null,
  };
}

/** Drawn where no layout says how far apart the runs lie, in. Rule of the trade, no source. */
const USUAL_SPACING = 3;
