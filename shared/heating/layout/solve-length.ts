import { closestSpacing, type LayoutCable } from './cable.js';
import { cutToLength, pathLength, pathOf } from './cable-path.js';
import type { FieldChain } from './field.js';
import { layField, type FieldWay, type LaidField } from './lay-field.js';
import type { Piece } from './path.js';

/** A path of exactly the label's length. */
export interface SolvedPath {
  readonly pieces: readonly Piece[];
  /** Spacing asked for in each field, in; it never falls from one field to the next. */
  readonly spacings: readonly number[];
  readonly laid: readonly LaidField[];
}

/** Lays fields at given spacings and remembers what it laid: the search asks for the same again and again. */
export class Layer {
  private readonly known = new Map<string, LaidField>();

  constructor(
    readonly chain: FieldChain,
    readonly ways: readonly FieldWay[],
    readonly cable: LayoutCable,
  ) {}

  lay(spacings: readonly number[]): LaidField[] {
    return this.chain.fields.map((field, i) => {
      const spacing = spacings[i]!;
      const key = `${i} ${spacing}`;
      const known = this.known.get(key);
      if (known) return known;
      const laid = layField(
        field,
        this.ways[i]!,
        spacing,
        closestSpacing(this.cable),
        this.cable.greatestSpacing,
      );
      this.known.set(key, laid);
      return laid;
    });
  }

  path(spacings: readonly number[], pullBacks?: readonly number[]): Piece[] {
    return pathOf(
      this.chain,
      this.lay(spacings),
      pullBacks ?? spacings.map(() => 0),
      this.cable,
      Math.max(...spacings),
    );
  }

  /** Length at one spacing throughout, in. */
  lengthAt(spacing: number): number {
    return pathLength(this.path(this.chain.fields.map(() => spacing)));
  }
}

/** Growth of the spacing from one trial to the next while a spacing that takes too little cable is looked for. */
const GROWTH = 1.03;

/**
 * Uses the label's length to the inch. The widest even spacing that still takes all of it is found first; then the
 * spacing opens field by field from the end as long as it does; then loops are drawn in from their closed ends, from
 * the end too; what is then left over is taken off the last run. Null when the closest spacing takes less than the label
 * has, or the greatest more.
 */
export function solveLength(layer: Layer): SolvedPath | null {
  const { cable } = layer;
  const [closest, greatest] = [closestSpacing(cable), cable.greatestSpacing];
  if (layer.lengthAt(closest) < cable.length) return null;
  let tight = closest;
  let open = closest;
  while (layer.lengthAt(open) >= cable.length) {
    if (open >= greatest) return null;
    tight = open;
    open = Math.min(greatest, open * GROWTH);
  }
  for (let k = 0; k < 12; k++) {
    const half = (tight + open) / 2;
    if (layer.lengthAt(half) >= cable.length) tight = half;
    else open = half;
  }
  return drawnIn(layer, openedFromTheEnd(layer, tight));
}

/** Trials by which a field's spacing is opened, as a factor. */
const OPENINGS = [1, 1.02, 1.04, 1.06, 1.08, 1.1, 1.13, 1.16, 1.2, 1.25];

/** Opens field after field from the end, each by what leaves the least cable over. */
function openedFromTheEnd(layer: Layer, spacing: number): number[] {
  const spacings = layer.chain.fields.map(() => spacing);
  const { length, greatestSpacing } = layer.cable;
  for (let i = spacings.length - 1; i >= 0; i--) {
    let best = { over: Infinity, spacing };
    for (const factor of OPENINGS) {
      const trial = Math.min(greatestSpacing, spacing * factor);
      const over = pathLength(layer.path(spacings.map((s, k) => (k === i ? trial : s)))) - length;
      if (over >= 0 && over < best.over - 1e-6) best = { over, spacing: trial };
    }
    spacings[i] = best.spacing;
  }
  return spacings;
}

/** Draws loops in from the last field backwards until the length fits, and takes the rest off the end. */
function drawnIn(layer: Layer, spacings: readonly number[]): SolvedPath {
  const target = layer.cable.length;
  const pullBacks = spacings.map(() => 0);
  for (let i = spacings.length - 1; i >= 0; i--) {
    const excess = pathLength(layer.path(spacings, pullBacks)) - target;
    if (excess <= 1e-9) break;
    const over = (by: number) =>
      pathLength(
        layer.path(
          spacings,
          pullBacks.map((p, k) => (k === i ? by : p)),
        ),
      ) - target;
    let [within, most] = [0, spacings[i]! / 2];
    if (over(most) >= 0) within = most;
    for (let k = 0; k < 24 && most - within > 1e-6; k++) {
      const half = (within + most) / 2;
      if (over(half) >= 0) within = half;
      else most = half;
    }
    pullBacks[i] = within;
  }
  const path = layer.path(spacings, pullBacks);
  return {
    pieces: cutToLength(path, pathLength(path) - target),
    spacings,
    laid: layer.lay(spacings),
  };
}
