import { QUANTITY_NAMES, type QuantityName } from '../../shared/entry/quantities/quantity-names.js';
import type { Prisma } from '../generated/prisma/client.js';
import type { Quantity } from './quantity.model.js';

/** Name and unit of every quantity as shown. */
const LABELS: Readonly<Record<QuantityName, readonly [label: string, unit: string]>> = {
  demoSquareFeet: ['Tear-out', 'sq ft'],
  digCubicYards: ['Dig', 'cu yd'],
  footingFeet: ['Footing', 'ft'],
  footingCubicYards: ['Footing concrete', 'cu yd'],
  blocks: ['Block', 'pieces'],
  groutCubicYards: ['Grout in the block', 'cu yd'],
  topSquareFeet: ['Tops', 'sq ft'],
  veneerSquareFeet: ['Veneer', 'sq ft'],
  baseSquareFeet: ['Walk base', 'sq ft'],
  baseCubicYards: ['Walk base concrete', 'cu yd'],
  bedCubicYards: ['Mortar bed', 'cu yd'],
  mortarSacks: ['Mortar', 'sacks'],
  sandCubicFeet: ['Sand', 'cu ft'],
  meshSquareFeet: ['Mesh', 'sq ft'],
  stoneSquareFeet: ['Stone', 'sq ft'],
  heatedSquareFeet: ['Heated area', 'sq ft'],
  cableFeet: ['Heating cable', 'ft'],
  heatingSets: ['Heating sets', 'pieces'],
  sleeves: ['Wall sleeves', 'pieces'],
  risers: ['Risers', 'pieces'],
};

/** The quantities of a job as shown: what does not occur is left out. */
export function shownQuantities(stored: Prisma.JsonValue): Quantity[] {
  const amounts = stored as Partial<Record<QuantityName, number>>;
  return QUANTITY_NAMES.flatMap((key) => {
    const value = amounts[key] ?? 0;
    const [label, unit] = LABELS[key];
    return value === 0 ? [] : [{ key, label, value, unit }];
  });
}
