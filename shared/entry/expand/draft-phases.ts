import type { EntryMeasurement } from '../measurement/measurement.js';
import type { DraftHookup, DraftPhase, DraftPlacement } from '../template/draft.js';
import type { EntryTemplate, TemplatePlacement } from '../template/template.js';
import type { ExpandedPhase } from './expanded-phase.js';
import { phaseMinutes } from './phase-minutes.js';

/** The phases as they are written down. */
export const draftPhases = (phases: readonly ExpandedPhase[], setCount: number): DraftPhase[] =>
  phases.map(({ key, of, area, set, quantities }, position) => ({
    key,
    kind: of.kind,
    areaKey: area?.key ?? null,
    heatingSetKey: set?.key ?? null,
    name: phaseName(of.name, area?.name ?? (of.scope === 'set' && setCount > 1 ? set?.name : undefined)),
    hatch: of.hatch,
    trade: of.trade,
    position,
    durationKind: of.duration.kind,
    durationMinutes: phaseMinutes(of.duration, quantities),
    crewSize: of.duration.kind === 'work' ? of.duration.crewSize : null,
    continuity: of.continuity,
    weatherLimitKey: of.weatherLimits,
  }));

const phaseName = (name: string, place: string | undefined): string => (place ? `${name}: ${place}` : name);

/** What the phases place, with the strength that the template's hold points ask of it. */
export function draftPlacements(
  phases: readonly ExpandedPhase[],
  template: EntryTemplate,
  measurement: EntryMeasurement,
): DraftPlacement[] {
  return phases.flatMap(({ key, of }) => {
    if (!of.placement) return [];
    const asked = template.holdPoints.flatMap((point) =>
      point.kind === 'cure' && point.placement === of.kind ? [point.requiredPsi] : [],
    );
    const { material, sectionInches } = of.placement;
    return [
      {
        phaseKey: key,
        material,
        sectionInches: sectionOf(sectionInches, measurement),
        requiredPsi: Math.max(0, ...asked),
      },
    ];
  });
}

function sectionOf(
  section: TemplatePlacement['sectionInches'],
  { footing, buildUp }: EntryMeasurement,
): number {
  switch (section) {
    case 'footingThickness':
      return footing?.thickness ?? 0;
    case 'bedThickness':
      return buildUp.bed;
    case 'walkBaseThickness':
      return buildUp.walkBase;
    default:
      return section;
  }
}

/** One hookup for each set that has a phase of the kind `hookup`. */
export const draftHookups = (phases: readonly ExpandedPhase[]): DraftHookup[] =>
  phases.flatMap(({ key, of, set }) => {
    if (of.kind !== 'hookup' || !set) return [];
    const energise = phases.find((phase) => phase.of.kind === 'energise' && phase.set?.key === set.key);
    return [{ heatingSetKey: set.key, phaseKey: key, energisePhaseKey: energise?.key ?? null }];
  });
