import { signedArea } from '../../entry/geometry/outline.js';
import { distance, type Point } from '../../entry/geometry/point.js';
import type { SitePlan } from '../../entry/geometry/site-plan.js';
import { closestSpacing, type LayoutCable } from './cable.js';
import { chooseWays } from './choose-ways.js';
import type { FieldChain } from './field.js';
import { fieldsOf, NoWayThrough } from './fields-of.js';
import { innerRing } from './inner-ring.js';
import { faultsOf } from './layout-faults.js';
import { measureLayout, type LayoutMeasure } from './measure/measure-layout.js';
import { samplePath } from './measure/sample-path.js';
import type { Piece } from './path.js';
import { placeSensor, type SensorPlace } from './place-sensor.js';
import { rangeThatFits, sayMisfit, type FitRange } from './range-that-fits.js';
import { Layer, solveLength } from './solve-length.js';

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

/** Spacings, as parts of the likely one, at which ways through the fields are chosen, until one keeps every limit. */
const TRIALS = [1, 0.94, 1.07, 0.88];

function lay(plan: SitePlan, chain: FieldChain, cable: LayoutCable): LayoutOutcome {
  const likely = likelySpacing(chain, cable);
  let broken: string[] = [];
  let fits: FitRange | null = null;
  for (const part of TRIALS) {
    const spacing = Math.max(closestSpacing(cable), likely * part);
    const layer = new Layer(chain, chooseWays(chain, plan.penetration, cable, spacing), cable);
    const solved = solveLength(layer);
    if (solved) {
      const measure = measureLayout(chain, solved.pieces, cable);
      const faults = faultsOf(measure, cable);
      if (faults.length === 0)
        return { ok: true, layout: finished(plan, chain, cable, solved.pieces, measure) };
      broken = faults;
    }
    // A set that keeps no limit though it fits may do so along other ways; what fits is asked for once at the end.
    if (broken.length > 0 && part !== TRIALS[TRIALS.length - 1]) continue;
    fits = wider(fits, rangeThatFits(layer));
    if (cable.length > fits.longest * 1.1 || cable.length < fits.shortest / 1.1) break;
  }
  if (fits !== null && (cable.length > fits.longest || cable.length < fits.shortest))
    return { ok: false, ...sayMisfit(cable, fits), fits };
  return {
    ok: false,
    code: 'limitsBroken',
    message: `no layout keeps every limit: ${broken.join('; ')}`,
    fits,
  };
}

const wider = (one: FitRange | null, other: FitRange): FitRange =>
  one === null
    ? other
    : { shortest: Math.min(one.shortest, other.shortest), longest: Math.max(one.longest, other.longest) };

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
