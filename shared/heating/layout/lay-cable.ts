import { distance, type Point } from '../../entry/geometry/point.js';
import type { SitePlan } from '../../entry/geometry/site-plan.js';
import { closestSpacing, type LayoutCable } from './cable.js';
import type { FieldChain } from './field.js';
import { fieldsOf, NoWayThrough } from './fields-of.js';
import { faultsOf } from './layout-faults.js';
import { measureLayout, type LayoutMeasure } from './measure/measure-layout.js';
import { samplePath } from './measure/sample-path.js';
import { openSurface } from './open-surface.js';
import type { Piece } from './path.js';
import { placeSensor, type SensorPlace } from './place-sensor.js';
import type { Layer } from './layer.js';
import { Layers } from './layers.js';
import { solveAnyhow, solveLength } from './solve-length.js';
import { fitRanges, sayMisfit, type FitRange } from './what-fits.js';

/** A layout that keeps every limit, with what was measured of it. */
export interface CableLayout {
  readonly chain: FieldChain;
  readonly cable: LayoutCable;
  readonly penetration: Point;
  readonly pieces: readonly Piece[];
  readonly measure: LayoutMeasure;
  readonly sensor: SensorPlace | null;
  /** From the sleeve to the cold joint, in. */
  readonly coldLeadOutside: number;
}

/** A layout, or why there is none and what would help. */
export type LayoutOutcome =
  | { readonly ok: true; readonly layout: CableLayout }
  | {
      readonly ok: false;
      readonly code: 'noWayThrough' | 'setTooLong' | 'setTooShort' | 'limitsBroken';
      readonly message: string;
      /** The nearest label lengths that these surfaces take, in; null when the surfaces are at fault. */
      readonly fits: FitRange | null;
    };

/** Lays a heating set through surfaces in turn, and measures what it laid; nothing outside the limits is given out. */
export function layCable(plan: SitePlan, areaKeys: readonly string[], cable: LayoutCable): LayoutOutcome {
  try {
    return lay(plan, fieldsOf(plan, areaKeys, cable), cable);
  } catch (error) {
    if (!(error instanceof NoWayThrough)) throw error;
    return { ok: false, code: 'noWayThrough', message: error.message, fits: null };
  }
}

/** Parts of the likely spacing for which ways are chosen when no others take the label's length. */
const MORE = [0.9, 1.12, 0.8, 1.25];

/** Kept of the greatest spacing beyond what is usual when layouts that were thought to keep it do not, in. */
const MARGIN = 1;
/** Sets are labelled in whole feet, in. */
const FOOT = 12;
/** So many lengths that are thought to fit are tried before a set is refused. */
const TRIED = 6;

/** Lays a set, or says what fits: lengths that were laid, sought away from the label's in steps that grow. */
function lay(plan: SitePlan, chain: FieldChain, cable: LayoutCable): LayoutOutcome {
  const own = attempt(plan, chain, cable);
  if (own.layout) return { ok: true, layout: own.layout };
  const broken = own.broken.length > 0;
  const because = `no layout of its length keeps every limit: ${own.broken.join('; ')}`;
  let ranges = broken ? without(own.ranges, cable.length - FOOT, cable.length + FOOT) : own.ranges;
  for (let tried = 0, step = FOOT; tried < TRIED; tried++, step *= broken ? 2 : 1) {
    const misfit = sayMisfit(cable, ranges);
    const { fits, message } = misfit;
    if (!fits) break;
    const below = fits.longest < cable.length;
    const length = FOOT * (below ? Math.floor(fits.longest / FOOT) : Math.ceil(fits.shortest / FOOT));
    if (attempt(plan, chain, { ...cable, length }).layout) {
      return { ok: false, ...misfit, message: broken ? `${message} (${because})` : message };
    }
    ranges = below
      ? without(ranges, length - step, fits.longest)
      : without(ranges, fits.shortest, length + step);
  }
  if (broken) return { ok: false, code: 'limitsBroken', message: because, fits: null };
  return { ok: false, ...sayMisfit(cable, []) };
}

/** Ranges of lengths without those strictly between two. */
function without(ranges: readonly FitRange[], from: number, to: number): FitRange[] {
  return ranges.flatMap(({ shortest, longest }) =>
    [
      { shortest, longest: Math.min(longest, from) },
      { shortest: Math.max(shortest, to), longest },
    ].filter((rest) => rest.shortest <= rest.longest),
  );
}

/** What came of trying to lay a set: a layout; or which lengths are thought to fit, and which limits all layouts break. */
interface Attempt {
  readonly layout: CableLayout | null;
  readonly ranges: readonly FitRange[];
  readonly broken: readonly string[];
}

/** Seeks a layout, and once more with gaps kept narrower than asked where none that was found keeps every limit. */
function attempt(plan: SitePlan, chain: FieldChain, cable: LayoutCable): Attempt {
  const first = seek(plan, chain, cable, cable);
  if (first.layout || first.broken.length === 0) return first;
  return seek(plan, chain, cable, { ...cable, greatestSpacing: cable.greatestSpacing - MARGIN });
}

/** Seeks a layout that keeps the limits of `cable` among those that are thought to keep the limits of `sought`. */
function seek(plan: SitePlan, chain: FieldChain, cable: LayoutCable, sought: LayoutCable): Attempt {
  const layers = new Layers(chain, plan.penetration, sought);
  const likely = openSurface(chain, cable) / cable.length;
  let broken: string[] = [];
  const tried = (pieces: Piece[] | null): Attempt | null => {
    if (!pieces) return null;
    const measure = measureLayout(chain, pieces, cable);
    broken = faultsOf(measure, cable);
    if (broken.length > 0) return null;
    return { layout: finished(plan, chain, cable, pieces, measure), ranges: [], broken };
  };
  const neat = tried(solveLength(layers.neat(likely)));
  if (neat) return neat;
  const seen: Layer[] = [];
  for (const layer of others(layers, likely, sought)) {
    seen.push(layer);
    for (const pieces of solveAnyhow(layer)) {
      const found = tried(pieces);
      if (found) return found;
    }
  }
  return { layout: null, ranges: fitRanges(seen), broken };
}

/**
 * What the ways chosen for the likely spacing do not take, others may: those that do not depend on it first, and more where the set
 * is not too long for these by far.
 */
function* others(layers: Layers, likely: number, cable: LayoutCable): Generator<Layer> {
  const standing = layers.standing();
  yield* standing;
  const longest = fitRanges(standing).pop()?.longest ?? Infinity;
  if (cable.length > longest * 1.02) return;
  yield layers.full(Math.min(likely, cable.greatestSpacing / 2));
  if (likely > cable.greatestSpacing) return;
  for (const part of MORE) yield layers.neat(likely * part);
}

function finished(
  plan: SitePlan,
  chain: FieldChain,
  cable: LayoutCable,
  pieces: readonly Piece[],
  measure: LayoutMeasure,
): CableLayout {
  const samples = samplePath(pieces, 0.5);
  return {
    chain,
    cable,
    penetration: plan.penetration,
    pieces,
    measure,
    sensor: placeSensor(chain.fields[0]!, samples, closestSpacing(cable), cable.greatestSpacing),
    coldLeadOutside: distance(plan.penetration, pieces[0]!.from),
  };
}
