import { inches, toCubicYards, layer } from '../../units/length.js';
import type { MeasuredArea } from '../measurement/area.js';
import type { EntryMeasurement } from '../measurement/measurement.js';
import { areaFaces } from './area-faces.js';
import { cableShare } from './cable-share.js';
import { concreteVolume } from './concrete-volume.js';
import { mortarMix } from './mortar.js';
import { noQuantities, type Quantities } from './quantity-names.js';

/** Concrete ordered over the measured volume. Common practice, no source. */
export const CONCRETE_WASTE = 0.05;
/** Parts of sand to one of cement in the bed. Common practice, no source. */
const BED_SAND_PARTS = 3;

/** What one area takes above the block or the base. */
export function areaQuantities(area: MeasuredArea, measurement: EntryMeasurement): Quantities {
  const { top, upright } = areaFaces(area);
  const bed = toCubicYards(layer(top, measurement.buildUp.bed));
  const mix = mortarMix(bed, BED_SAND_PARTS);
  const isWalk = area.kind === 'walk';
  const base = isWalk ? measurement.buildUp.walkBase : inches(0);
  return {
    ...noQuantities(),
    topSquareFeet: top,
    stoneSquareFeet: top,
    demoSquareFeet: top,
    veneerSquareFeet: upright,
    baseSquareFeet: isWalk ? top : 0,
    baseCubicYards: concreteVolume(top, base, CONCRETE_WASTE),
    bedCubicYards: bed,
    mortarSacks: mix.sacks,
    sandCubicFeet: mix.sandCubicFeet,
    meshSquareFeet: area.heated ? top : 0,
    heatedSquareFeet: area.heated ? top : 0,
    cableFeet: cableShare(area, measurement),
    risers: area.kind === 'flight' ? area.riserCount : 0,
  };
}
