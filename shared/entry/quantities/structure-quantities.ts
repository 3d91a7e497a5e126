import { cubicYards, squareFeet, type SquareFeet } from '../../units/length.js';
import type { EntryMeasurement, FootingMeasure } from '../measurement/measurement.js';
import { areaFaces } from './area-faces.js';
import { CONCRETE_WASTE } from './area-quantities.js';
import { blockCount } from './block-count.js';

/** Room to work in beside the footing, both sides together, in. Common practice, no source. */
const WORKING_ROOM = 12;
/** Grout in the cells of a filled 8-in block, ft³. Common practice, no source. */
const GROUT_PER_BLOCK = 0.3;

type StructureQuantity = 'digCubicYards' | 'footingFeet' | 'footingCubicYards' | 'blocks' | 'groutCubicYards';

/** What stands in the ground under landing and steps; nothing when there are none. */
export function structureQuantities(measurement: EntryMeasurement): Record<StructureQuantity, number> {
  const { footing } = measurement;
  if (!footing)
    return { digCubicYards: 0, footingFeet: 0, footingCubicYards: 0, blocks: 0, groutCubicYards: 0 };
  const blocks = blockCount(blockFace(measurement, footing));
  return {
    digCubicYards: cubicYards((footing.length * (footing.width + WORKING_ROOM) * footing.bottom) / 144 / 27),
    footingFeet: footing.length,
    footingCubicYards: cubicYards(
      ((footing.length * footing.width * footing.thickness) / 144 / 27) * (1 + CONCRETE_WASTE),
    ),
    blocks,
    groutCubicYards: cubicYards((blocks * GROUT_PER_BLOCK) / 27),
  };
}

/** Faces of the block: from the footing's top to grade along the whole footing, and every upright above. */
function blockFace({ areas }: EntryMeasurement, footing: FootingMeasure): SquareFeet {
  const below = footing.length * Math.max(0, (footing.bottom - footing.thickness) / 12);
  const above = areas
    .filter((area) => area.kind !== 'walk')
    .reduce((sum, area) => sum + areaFaces(area).upright, 0);
  return squareFeet(below + above);
}
