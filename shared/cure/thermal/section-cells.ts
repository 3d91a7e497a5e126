import type { HydrationHeat } from '../hydration/hydration-heat.js';
import { heatCapacity } from './material.js';
import type { Section } from './section.js';

/** A section cut into cells, per square metre of its face. */
export interface SectionCells {
  readonly count: number;
  /** J/(m²·K) of each cell. */
  readonly capacity: Float64Array;
  /** Thickness of each cell, m. */
  readonly volume: Float64Array;
  /** W/(m²·K) from each cell to the one under it. */
  readonly between: Float64Array;
  readonly start: Float64Array;
  readonly heats: readonly (HydrationHeat | null)[];
  /** From the top face to the middle of the first cell, m²·K/W. */
  readonly halfTop: number;
  readonly halfBottom: number;
  /** Cells of the placed layer, the end exclusive. */
  readonly placed: { readonly from: number; readonly to: number };
}

/** Cuts a section into cells. Throws when a layer has no thickness or no cell, or nothing was placed. */
export function cutIntoCells({ layers, placed }: Section): SectionCells {
  if (!layers[placed]) throw new RangeError(`No layer ${placed}; say which of ${layers.length} was placed`);
  const cells = layers.flatMap((layer, index) => {
    const { thickness, cells: into } = layer;
    if (!(thickness > 0) || !Number.isSafeInteger(into) || into < 1) {
      throw new RangeError('A layer needs a thickness over 0 m and one cell at least');
    }
    return Array.from({ length: into }, () => ({ ...layer, index, thickness: thickness / into }));
  });
  const half = cells.map(({ thickness, material }) => thickness / 2 / material.conductivity);
  const from = cells.findIndex(({ index }) => index === placed);
  return {
    count: cells.length,
    capacity: Float64Array.from(cells, ({ thickness, material }) => thickness * heatCapacity(material)),
    volume: Float64Array.from(cells, ({ thickness }) => thickness),
    between: Float64Array.from(half.slice(1), (next, i) => 1 / (half[i]! + next)),
    start: Float64Array.from(cells, ({ start }) => start),
    heats: cells.map(({ heat }) => heat),
    halfTop: half[0]!,
    halfBottom: half.at(-1)!,
    placed: { from, to: from + layers[placed].cells },
  };
}
