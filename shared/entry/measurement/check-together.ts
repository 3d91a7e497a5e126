import type { Fault } from '../read/fault.js';
import { repeated } from '../read/key.js';
import type { EntryMeasurement } from './measurement.js';

/** Faults that no single value has: keys used twice, heated areas without a set, heights that do not add up. */
export function checkTogether(measurement: EntryMeasurement): Fault[] {
  return [
    ...checkKeys(measurement),
    ...checkSets(measurement),
    ...checkStructure(measurement),
    ...checkHeights(measurement),
  ];
}

function checkKeys({ areas, heatingSets }: EntryMeasurement): Fault[] {
  const twice = (path: string, keys: string[]): Fault[] =>
    repeated(keys).map((key) => ({ path, message: `key "${key}" is used twice; give each its own` }));
  return [
    ...twice(
      'areas',
      areas.map((area) => area.key),
    ),
    ...twice(
      'heatingSets',
      heatingSets.map((set) => set.key),
    ),
  ];
}

function checkSets({ areas, heatingSets }: EntryMeasurement): Fault[] {
  const faults: Fault[] = [];
  heatingSets.forEach((set, i) => {
    for (const key of set.areas) {
      const area = areas.find((candidate) => candidate.key === key);
      const path = `heatingSets[${i}].areas`;
      if (!area) faults.push({ path, message: `there is no area "${key}"; measure it or take it out` });
      else if (!area.heated)
        faults.push({ path, message: `area "${key}" is not heated; mark it heated or take it out` });
    }
  });
  const served = heatingSets.flatMap((set) => set.areas);
  for (const key of repeated(served)) {
    const message = `area "${key}" is named twice; where two sets heat one surface, measure it as two areas`;
    faults.push({ path: 'heatingSets', message });
  }
  areas.forEach((area, i) => {
    if (area.heated && !served.includes(area.key)) {
      faults.push({
        path: `areas[${i}]`,
        message: `"${area.key}" is heated but no heating set runs through it`,
      });
    }
  });
  return faults;
}

/** How far the risers may add up past the landing's height before the tape is to be read again, in. */
const HEIGHT_SLACK = 0.5;

function checkStructure({ areas, footing }: EntryMeasurement): Fault[] {
  const faults: Fault[] = [];
  const built = areas.some((area) => area.kind !== 'walk');
  if (built && !footing)
    faults.push({ path: 'footing', message: 'landing and steps need a footing; measure it' });
  if (!built && footing)
    faults.push({ path: 'footing', message: 'no landing or steps stand on it; leave it out' });
  const landings = areas.filter((area) => area.kind === 'landing');
  areas.forEach((area, i) => {
    if (area.kind !== 'flight' || landings.length !== 1) return;
    const rise = area.riserCount * area.riser;
    const height = landings[0]?.height ?? 0;
    if (Math.abs(rise - height) > HEIGHT_SLACK) {
      const sum = `${area.riserCount} risers of ${area.riser} in make ${rise} in`;
      const message = `${sum}, the landing stands ${height} in high; measure both again`;
      faults.push({ path: `areas[${i}]`, message });
    }
  });
  return faults;
}

function checkHeights({ areas, design: { heights } }: EntryMeasurement): Fault[] {
  const landings = areas.filter((area) => area.kind === 'landing');
  const [landing] = landings;
  if (!heights || !landing || landings.length !== 1) return [];
  const height = heights.sill - heights.doorDrop;
  if (Math.abs(height - landing.height) <= HEIGHT_SLACK) return [];
  const sum = `sill ${heights.sill} in less ${heights.doorDrop} in makes ${height} in`;
  const message = `${sum}, the landing stands ${landing.height} in high; measure both again`;
  return [{ path: 'design.heights', message }];
}
