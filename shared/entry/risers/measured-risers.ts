import { inches, type Inches } from '../../units/length.js';

/** Finished risers from finished heights as measured, from the walk upwards. */
export function measuredRisers(heights: readonly Inches[]): Inches[] {
  return heights.slice(1).map((height, i) => inches(height - heights[i]!));
}

/** Finished risers that block tops as built will give under the layers to come: what the mason may still put right. */
export function risersToCome(blockTops: readonly Inches[], walk: Inches, treadBuildUp: Inches): Inches[] {
  return measuredRisers([walk, ...blockTops.map((top) => inches(top + treadBuildUp))]);
}
