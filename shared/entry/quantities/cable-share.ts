import { feet, squareFeet, type Feet, type SquareFeet } from '../../units/length.js';
import type { MeasuredArea } from '../measurement/area.js';
import type { EntryMeasurement, MeasuredSet } from '../measurement/measurement.js';
import { areaFaces } from './area-faces.js';

/** Area that a set's cable covers, all its areas together. */
export function setSquareFeet(set: MeasuredSet, measurement: EntryMeasurement): SquareFeet {
  const areas = measurement.areas.filter((area) => set.areas.includes(area.key));
  return squareFeet(areas.reduce((sum, area) => sum + areaFaces(area).top, 0));
}

/** Cable of its set that falls to an area when it is laid at one spacing throughout; 0 when nothing heats it. */
export function cableShare(area: MeasuredArea, measurement: EntryMeasurement): Feet {
  const set = measurement.heatingSets.find((candidate) => candidate.areas.includes(area.key));
  if (!set) return feet(0);
  return feet((set.heatedLength * areaFaces(area).top) / setSquareFeet(set, measurement));
}
