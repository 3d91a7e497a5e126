import { signedArea } from '../../entry/geometry/outline.js';
import { distance, type Point } from '../../entry/geometry/point.js';
import type { SitePlan } from '../../entry/geometry/site-plan.js';
import { closestSpacing, type LayoutCable } from './cable.js';
import type { FieldChain } from './field.js';
import { fieldsOf, NoWayThrough } from './fields-of.js';
import { innerRing } from './inner-ring.js';
import { faultsOf } from './layout-faults.js';
import { measureLayout, type LayoutMeasure } from './measure/measure-layout.js';
import { samplePath } from './measure/sample-path.js';
import type { Piece } from './path.js';
import { placeSensor, type SensorPlace } from './place-sensor.js';
import { rangeThatFits, sayMisfit, type FitRange } from './range-that-fits.js';
import { Layers } from './layers.js';
import { solveAnyhow, solveLength } from './solve-length.js';

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
      /** Label lengths that these surfaces take, in; null when the surfaces are at fault. */
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
  const likely = likelySpacing(chain, cable);
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
  // What the ways chosen for the likely spacing do not take, others may; what fits is what they take.
  const standing = layers.standing();
  const fits = rangeThatFits(standing);
  const inside = cable.length <= fits.longest * 1.02 && cable.length >= fits.shortest * 0.8;
  const more = inside ? MORE.map((part) => () => layers.neat(likely * part)) : [];
  for (const layer of [...standing.map((one) => () => one), ...more]) {
    for (const pieces of solveAnyhow(layer())) {
      const outcome = tried(pieces);
      if (outcome) return outcome;
    }
  }
  if (broken.length === 0) return { ok: false, ...sayMisfit(cable, fits), fits };
  return {
    ok: false,
    code: 'limitsBroken',
    message: `no layout keeps every limit: ${broken.join('; ')}`,
    fits,
  };
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

/** Surface inside the setbacks over the label's length: near where the spacing will come to lie, in. */
function likelySpacing(chain: FieldChain, cable: LayoutCable): number {
  const surface = chain.fields.reduce((sum, { sides }) => {
    const ring = innerRing(sides) ?? [];
    const around = ring.reduce((length, { a, b }) => length + distance(a, b), 0);
    return sum + Math.abs(signedArea(ring.map(({ a }) => a))) + around * 1.5;
  }, 0);
  return Math.min(cable.greatestSpacing, Math.max(closestSpacing(cable), surface / cable.length));
}
