import {
  cubicYards,
  layer,
  toCubicYards,
  type CubicYards,
  type Inches,
  type SquareFeet,
} from '../../units/length.js';

/** Concrete for a layer with a fraction of waste: 420 ft² at 4 in is 5.185 yd³, 5.44 with 5 %. */
export function concreteVolume(area: SquareFeet, thickness: Inches, waste = 0): CubicYards {
  return cubicYards(toCubicYards(layer(area, thickness)) * (1 + waste));
}
