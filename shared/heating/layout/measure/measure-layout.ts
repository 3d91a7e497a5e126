import { inside, signedArea } from '../../../entry/geometry/outline.js';
import { closestSpacing, type LayoutCable } from '../cable.js';
import type { Field, FieldChain } from '../field.js';
import type { Piece } from '../path.js';
import { tightestBend } from './bend-radius.js';
import { clearances, type Clearances } from './clearances.js';
import { closestRuns } from './run-spacing.js';
import { samplePath, type Samples } from './sample-path.js';
import { GapFinder, type Gap } from './widest-gap.js';

/** One field as its cable was measured. */
export interface FieldMeasure {
  readonly key: string;
  readonly areaKey: string;
  readonly squareInches: number;
  /** Cable in it, in. */
  readonly length: number;
  /** Mean spacing on centres: surface over length, in. */
  readonly meanSpacing: number;
  readonly wattsPerSquareFoot: number;
  readonly widestGap: Gap;
}

/** A layout as measured from its path, whatever the search meant it to be. All lengths in inches. */
export interface LayoutMeasure {
  readonly length: number;
  /** Least distance on centres of runs, in; no less than what it is looked for within. */
  readonly closest: number;
  readonly tightestBend: number;
  readonly clearances: Clearances;
  readonly fields: readonly FieldMeasure[];
}

/** How finely the cable, and the surface between it, is looked at, in. */
const PITCH = 0.5;

/** Measures a path by itself: length, spacing, bends, clearances, gaps and power density. */
export function measureLayout(
  chain: FieldChain,
  pieces: readonly Piece[],
  cable: LayoutCable,
): LayoutMeasure {
  const samples = samplePath(pieces, PITCH);
  const least = closestSpacing(cable);
  const shared = chain.fields.map(
    (_, i) =>
      new Set(
        [chain.passages[i]?.fromSide, chain.passages[i - 1]?.toSide].filter((side) => side !== undefined),
      ),
  );
  const held = heldBy(chain.fields, samples);
  const lengths = chain.fields.map(() => 0);
  let field = 0;
  for (let i = 1; i < samples.count; i++) {
    // What steps down belongs to the field above.
    if (held[i]! >= 0) field = held[i]!;
    lengths[field]! += samples.along[i]! - samples.along[i - 1]!;
  }
  return {
    length: samples.along[samples.count - 1]!,
    closest: nearestRuns(samples, cable),
    tightestBend: tightestBend(pieces),
    clearances: clearances(chain.fields, shared, samples, held),
    fields: chain.fields.map((one, i) => {
      const squareInches = signedArea(one.sides.map(({ a }) => a));
      const length = lengths[i]!;
      return {
        key: one.key,
        areaKey: one.areaKey,
        squareInches,
        length,
        meanSpacing: length === 0 ? Infinity : squareInches / length,
        wattsPerSquareFoot: (length * cable.watts * 144) / (cable.length * squareInches),
        widestGap: new GapFinder(one, least / 2, PITCH).widest(samples),
      };
    }),
  };
}

/** Looks close by first: in most layouts runs lie near each other. */
function nearestRuns(samples: Samples, cable: LayoutCable): number {
  for (const reach of [1.2, 2]) {
    const apart = closestRuns(samples, cable.leastSpacing, reach * closestSpacing(cable));
    if (apart < Infinity) return apart;
  }
  return 2 * closestSpacing(cable);
}

/** The number of the field that holds each place of the cable: the one whose surface holds it at its height; -1 is none. */
function heldBy(fields: readonly Field[], { count, x, y, z }: Samples): Int32Array {
  const outlines = fields.map(({ sides }) => sides.map(({ a }) => a));
  const held = new Int32Array(count);
  let last = 0;
  for (let i = 0; i < count; i++) {
    const at = { x: x[i]!, y: y[i]! };
    const holds = (k: number) =>
      fields[k] !== undefined && Math.abs(fields[k].level - z[i]!) < 1e-6 && inside(outlines[k]!, at);
    held[i] = [last, last + 1].find(holds) ?? fields.findIndex((_, k) => holds(k));
    if (held[i]! >= 0) last = held[i]!;
  }
  return held;
}
