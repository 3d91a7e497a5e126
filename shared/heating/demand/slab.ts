import {
  CONCRETE,
  FILLED_BLOCK,
  heatCapacity,
  MORTAR,
  SOIL,
  STONE,
  type ThermalMaterial,
} from '../../cure/thermal/material.js';
import type { MeasuredArea } from '../../entry/measurement/area.js';
import type { EntryMeasurement } from '../../entry/measurement/measurement.js';
import { toBtuPerCubicFoot, toBtuPerHourFoot } from '../../units/heat.js';
import { inches, type Inches } from '../../units/length.js';

/** A layer over or under the cable. */
export interface SlabLayer {
  readonly thickness: Inches;
  readonly material: ThermalMaterial;
}

/** What lies over and under the cable, both counted away from it. */
export interface Slab {
  readonly above: readonly SlabLayer[];
  readonly below: readonly SlabLayer[];
}

/** Ground that counts as resistance under block or base, in. Common practice, no source. */
const GROUND = inches(12);

/** Resistance of layers one behind the other, h·ft²·°F/Btu. */
export const resistanceOf = (layers: readonly SlabLayer[]): number =>
  layers.reduce(
    (sum, { thickness, material }) => sum + thickness / 12 / toBtuPerHourFoot(material.conductivity),
    0,
  );

/** Heat that a layer keeps by the degree, Btu/ft²·°F. */
export const capacityOf = ({ thickness, material }: SlabLayer): number =>
  (thickness / 12) * toBtuPerCubicFoot(heatCapacity(material));

/** The layers of an area as measured: bed and stone over the cable; block, or a walk's base, and ground under it. */
export function slabOf(area: MeasuredArea, { buildUp }: EntryMeasurement): Slab {
  return {
    above: [
      { thickness: buildUp.bed, material: MORTAR },
      { thickness: buildUp.stone, material: STONE },
    ],
    below: [base(area, buildUp.walkBase), { thickness: GROUND, material: SOIL }],
  };
}

function base(area: MeasuredArea, walkBase: Inches): SlabLayer {
  if (area.kind === 'walk') return { thickness: walkBase, material: CONCRETE };
  // Under a flight the block is as high as half the rise, in the mean.
  const height = area.kind === 'landing' ? area.height : (area.riserCount * area.riser) / 2;
  return { thickness: inches(height), material: FILLED_BLOCK };
}
