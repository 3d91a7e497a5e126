import { powerDensity as density, spacingForLength } from '../../units/electrical.js';
import { inches } from '../../units/length.js';
import { circuitFindings } from '../design/circuits-of-entry.js';
import { heatOfEntry } from '../design/heat-of-entry.js';
import { risersOfEntry } from '../design/risers-of-entry.js';
import type { MeasuredArea } from '../measurement/area.js';
import type { EntryMeasurement, MeasuredSet } from '../measurement/measurement.js';
import { setSquareFeet } from '../quantities/cable-share.js';
import { blockedPhases } from './blocked-phases.js';
import type { Finding } from './finding.js';
import { RULES } from './rules.js';

/**
 * What the rules say about an entry as measured, before anything is ordered. Each finding names the area or set it is
 * about at the head of its text, and a broken one the kinds of phase that must not begin.
 */
export function designFindings(measurement: EntryMeasurement): Finding[] {
  const { footing, frost, areas, heatingSets } = measurement;
  return [
    ...(footing ? [about('Footing', RULES['footing-frost-depth'](footing.bottom, frost))] : []),
    ...areas.flatMap((area) => areaFindings(area, measurement)),
    ...heatingSets.flatMap((set) => setFindings(set, measurement)),
    ...heatOfEntry(measurement).map(({ areaName, finding }) => about(areaName, finding)),
    ...circuitFindings(measurement),
    ...(risersOfEntry(measurement)?.findings ?? []),
  ].map((finding) => ({ ...finding, blocks: blockedPhases(finding) }));
}

function areaFindings(area: MeasuredArea, { buildUp }: EntryMeasurement): Finding[] {
  const cover = inches(buildUp.bed + buildUp.stone);
  return [
    ...(area.kind === 'landing' ? [RULES['landing-depth'](area.length)] : []),
    ...(area.kind === 'flight' ? [RULES['riser-height'](area.riser), RULES['tread-depth'](area.tread)] : []),
    ...(area.heated ? [RULES['cable-cover'](cover), RULES['cable-depth'](cover)] : []),
    ...(area.heated && area.kind === 'walk' ? [RULES['walk-base'](buildUp.walkBase)] : []),
  ].map((finding) => ({ ...about(area.name, finding), areas: [area.key] }));
}

function setFindings(set: MeasuredSet, measurement: EntryMeasurement): Finding[] {
  const heated = setSquareFeet(set, measurement);
  return [
    RULES['cable-spacing'](spacingForLength(heated, set.heatedLength)),
    RULES['power-density'](density(set.watts, heated)),
  ].map((finding) => ({ ...about(set.name, finding), areas: set.areas }));
}

const about = (what: string, finding: Finding): Finding => ({ ...finding, text: `${what}: ${finding.text}` });
