import { inches } from '../../units/length.js';
import type { Fault } from '../read/fault.js';
import { readFrom, type Reader } from '../read/reader.js';
import type { BuildUp, EntryMeasurement, FootingMeasure, FrostDepth } from './measurement.js';
import { checkTogether } from './check-together.js';
import { readArea } from './read-area.js';
import { readDesign } from './read-design.js';
import { readFeet, readInches } from './read-length.js';
import { readSet } from './read-set.js';
import { readSitePlan } from './read-site-plan.js';
import { withDrawnTop } from './drawn-top.js';

/** A checked measurement, or everything that is wrong with it. */
export type MeasurementCheck =
  | { readonly ok: true; readonly measurement: EntryMeasurement }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Reads a measurement as a site visit writes it (lengths as numbers with the unit in the name) and gives it with
 * units, or every fault with its place and what to do.
 */
export function checkMeasurement(value: unknown): MeasurementCheck {
  const root = readFrom(value);
  if (
    !root.object(['version', 'frost', 'footing', 'buildUp', 'areas', 'heatingSets', 'design', 'sitePlan'])
  ) {
    return { ok: false, faults: root.faults };
  }
  if (root.at('version').value !== 1) root.at('version').fault('must be 1; this is the only form known');
  const footing = root.at('footing');
  const measured: Omit<EntryMeasurement, 'sitePlan'> = {
    version: 1,
    frost: readFrost(root.at('frost')),
    footing: footing.missing ? null : readFooting(footing),
    buildUp: readBuildUp(root.at('buildUp')),
    areas: root.at('areas').list(1).map(readArea),
    heatingSets: root.at('heatingSets').list().map(readSet),
    design: readDesign(root.at('design')),
  };
  const sitePlan = readSitePlan(root.at('sitePlan'), measured.areas);
  const areas = measured.areas.map((area) => withDrawnTop(area, sitePlan));
  const measurement = { ...measured, areas, sitePlan };
  if (root.faults.length === 0) root.faults.push(...checkTogether(measurement));
  return root.faults.length === 0 ? { ok: true, measurement } : { ok: false, faults: root.faults };
}

function readFrost(reader: Reader): FrostDepth {
  reader.object(['depthInches', 'source']);
  return { depth: readInches(reader.at('depthInches'), 0, 120), source: reader.at('source').text() };
}

function readFooting(reader: Reader): FootingMeasure {
  reader.object(['lengthFeet', 'widthInches', 'thicknessInches', 'bottomInches']);
  return {
    length: readFeet(reader.at('lengthFeet'), 2, 400),
    width: readInches(reader.at('widthInches'), 8, 60),
    thickness: readInches(reader.at('thicknessInches'), 6, 36),
    bottom: readInches(reader.at('bottomInches'), 6, 144),
  };
}

function readBuildUp(reader: Reader): BuildUp {
  reader.object(['bedInches', 'stoneInches', 'walkBaseInches']);
  return {
    bed: readInches(reader.at('bedInches'), 0.25, 4),
    stone: readInches(reader.at('stoneInches'), 0.5, 6),
    walkBase: inches(reader.at('walkBaseInches').numberOr(4, { min: 2, max: 12, unit: 'in' })),
  };
}
