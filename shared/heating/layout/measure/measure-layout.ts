import { inside, signedArea } from '../../../entry/geometry/outline.js';
import { closestSpacing, type LayoutCable } from '../cable.js';
import type { FieldChain } from '../field.js';
import type { Piece } from '../path.js';
import { tightestBend } from './bend-radius.js';
import { clearances, type Clearances } from './clearances.js';
import { closestRuns } from './run-spacing.js';
import { samplePath } from './sample-path.js';
import { widestGap, type Gap } from './widest-gap.js';

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

const PITCH = 0.25;
const GAP_PITCH = 1;

/** Measures a path by itself: length, spacing, bends, clearances, gaps and power density. */
export function measureLayout(
  chain: FieldChain,
  pieces: readonly Piece[],
  cable: LayoutCable,
): LayoutMeasure {
  const samples = samplePath(pieces, PITCH);
  const least = closestSpacing(cable);
  const reach = 2 * cable.leastSpacing;
  const shared = chain.fields.map(
    (_, i) =>
      new Set(
        [chain.passages[i]?.fromSide, chain.passages[i - 1]?.toSide].filter((side) => side !== undefined),
      ),
  );
  const lengths = new Map<string, number>();
  let field = chain.fields[0]!;
  samples.slice(1).forEach((sample, i) => {
    // What steps down belongs to the field above.
    field = chain.fields.find((one) => holds(one, sample.at)) ?? field;
    lengths.set(field.key, (lengths.get(field.key) ?? 0) + sample.along - samples[i]!.along);
  });
  return {
    length: samples[samples.length - 1]!.along,
    closest: closestRuns(samples, cable.leastSpacing, reach)?.apart ?? reach,
    tightestBend: tightestBend(pieces),
    clearances: clearances(chain.fields, shared, samples),
    fields: chain.fields.map((one) => {
      const squareInches = signedArea(one.sides.map(({ a }) => a));
      const length = lengths.get(one.key) ?? 0;
      return {
        key: one.key,
        areaKey: one.areaKey,
        squareInches,
        length,
        meanSpacing: length === 0 ? Infinity : squareInches / length,
        wattsPerSquareFoot: (length * cable.watts * 144) / (cable.length * squareInches),
        widestGap: widestGap(one, samples, least, GAP_PITCH),
      };
    }),
  };
}

const holds = (field: FieldChain['fields'][number], at: { x: number; y: number; z: number }): boolean =>
  Math.abs(field.level - at.z) < 1e-6 &&
  inside(
    field.sides.map(({ a }) => a),
    at,
  );
