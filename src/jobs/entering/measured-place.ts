import type { AreaKind } from '../../../shared/entry/measurement/area.js';
import type { EntryMeasurement } from '../../../shared/entry/measurement/measurement.js';

/** Places of a sheet that a rule holds against its limit, where there is one of them whatever is built. */
const PLACES: Readonly<Record<string, string>> = {
  'cable-cover': 'buildUp.stoneInches',
  'door-drop': 'design.heights.doorDropInches',
  'footing-frost-depth': 'footing.bottomInches',
  'shallow-footing': 'footing.bottomInches',
  'walk-base': 'buildUp.walkBaseInches',
};

/** The same where the place is in an area of a kind. */
const IN_AREAS: Readonly<Record<string, readonly [kind: AreaKind, member: string]>> = {
  'landing-depth': ['landing', 'lengthInches'],
  'riser-height': ['flight', 'riserInches'],
  'tread-depth': ['flight', 'treadInches'],
};

/** The same where the place is in a heating set. */
const IN_SETS: Readonly<Record<string, string>> = {
  'cold-lead-reach': 'coldLeadFeet',
  'power-density': 'watts',
};

/**
 * Where in a sheet the value stands that broke a rule, as a path; empty where no single value does, or where several areas
 * or sets could be meant.
 */
export function measuredPlace(
  rule: string,
  { areas, heatingSets }: Pick<EntryMeasurement, 'areas' | 'heatingSets'>,
): string {
  const inArea = IN_AREAS[rule];
  if (inArea) {
    const [kind, member] = inArea;
    const of = areas.flatMap((area, index) => (area.kind === kind ? [index] : []));
    return of.length === 1 ? `areas[${of[0]}].${member}` : '';
  }
  const inSet = IN_SETS[rule];
  if (inSet) return heatingSets.length === 1 ? `heatingSets[0].${inSet}` : '';
  return PLACES[rule] ?? '';
}
