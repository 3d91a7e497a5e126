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

function lay(plan: SitePlan, chain: FieldChain, cable: LayoutCable): LayoutOutcome {
  const layers = new Layers(chain, plan.penetration, cable);
  const likely = openSurface(chain, cable) / cable.length;
  let broken: string[] = [];
  const tried = (pieces: Piece[] | null): LayoutOutcome | null => {
    if (!pieces) return null;
    const measure = measureLayout(chain, pieces, cable);
    const faults = faultsOf(measure, cable);
    if (faults.length === 0) return { ok: true, layout: finished(plan, chain, cable, pieces, measure) };
    broken = faults;
    return null;
  };
  const neat = tried(solveLength(layers.neat(likely)));
  if (neat) return neat;
  const seen: Layer[] = [];
  for (const layer of others(layers, likely, cable)) {
    seen.push(layer);
    for (const pieces of solveAnyhow(layer)) {
      const outcome = tried(pieces);
      if (outcome) return outcome;
    }
  }
  const misfit = sayMisfit(cable, fitRanges(seen));
  if (broken.length === 0) return { ok: false, ...misfit };
  return {
    ok: false,
    code: 'limitsBroken',
    message: `no layout keeps every limit: ${broken.join('; ')}`,
    fits: misfit.fits,
  };
}

/**
 * What the ways chosen for the likely spacing do not take, others may: those that do not depend on it first, and more where the set
 * is not too long for these by far.
 */
function* others(layers: Layers, likely: number, cable: LayoutCable): Generator<Layer> {
  const standing = layers.standing();
  yield* standing;
  const longest = fitRanges(standing).pop()?.longest ?? 0;
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
