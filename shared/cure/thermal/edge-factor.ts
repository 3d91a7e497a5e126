import { fromMemory, type Source } from '../../entry/source.js';
import { erfc } from './erfc.js';
import { heatCapacity, type ThermalMaterial } from './material.js';

/** Which part of a placement is looked at: the middle of a face, an edge, or a corner where two edges meet. */
export type Exposure = 'face' | 'edge' | 'corner';

/** Where the factor comes from. */
export const EDGE_SOURCE: Source = fromMemory(
  'product of one-dimensional solutions, Carslaw and Jaeger, Conduction of Heat in Solids',
);

/**
 * Share of the excess over the air that is left at an edge or a corner, 0 to 1, when the face in between has all of it:
 * exp(x²)·erfc(x) with x = √(a·t)/(k·R) for each side that it is cooled from besides the face.
 *
 * @param hours since it began to cool
 * @param resistance film and blankets on those sides, m²·K/W
 */
export function edgeFactor(
  exposure: Exposure,
  material: ThermalMaterial,
  hours: number,
  resistance: number,
): number {
  if (exposure === 'face' || hours <= 0) return 1;
  const diffusivity = material.conductivity / heatCapacity(material);
  const x = Math.sqrt(diffusivity * hours * 3600) / (material.conductivity * resistance);
  const side = Math.exp(x * x) * erfc(x);
  const left = Number.isFinite(side) ? side : 1 / (x * Math.sqrt(Math.PI));
  return exposure === 'edge' ? left : left * left;
}
