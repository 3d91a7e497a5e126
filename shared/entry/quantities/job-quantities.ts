import type { EntryMeasurement, MeasuredSet } from '../measurement/measurement.js';
import { areaQuantities } from './area-quantities.js';
import { noQuantities, QUANTITY_NAMES, type Quantities } from './quantity-names.js';
import { structureQuantities } from './structure-quantities.js';

/** One sleeve for the cold lead and one for the sensor lead. */
const SLEEVES_PER_SET = 2;

/** What the whole job takes: its areas, what stands in the ground, and its heating sets. */
export function jobQuantities(measurement: EntryMeasurement): Quantities {
  const total = { ...noQuantities(), ...structureQuantities(measurement) };
  for (const area of measurement.areas) {
    const part = areaQuantities(area, measurement);
    for (const name of QUANTITY_NAMES) total[name] += part[name];
  }
  total.heatingSets = measurement.heatingSets.length;
  total.sleeves = SLEEVES_PER_SET * total.heatingSets;
  return total;
}

/** What belongs to one heating set and to no area. */
export function setQuantities(set: MeasuredSet): Quantities {
  return { ...noQuantities(), heatingSets: 1, sleeves: SLEEVES_PER_SET, cableFeet: set.heatedLength };
}
