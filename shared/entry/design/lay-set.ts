import { layCable, type CableLayout } from '../../heating/layout/lay-cable.js';
import { feet, inches, type Feet } from '../../units/length.js';
import type { SitePlan } from '../geometry/site-plan.js';
import type { MeasuredSet } from '../measurement/measurement.js';
import type { Finding } from '../rules/finding.js';
import { cableLayout } from '../rules/cable-layout.js';
import { coldLeadReach } from '../rules/cold-lead-reach.js';
import { layoutCableOf } from './layout-cable-of.js';
import { lengthsWithin } from './set-lengths.js';

/** A heating set as laid through its areas, or what would fit in its place. */
export interface SetOnPlan {
  readonly setKey: string;
  readonly setName: string;
  /** Null where it cannot be laid. */
  readonly layout: CableLayout | null;
  /** Where it cannot be laid: a set of the same watts per foot that can, and how it lies; null where none does. */
  readonly instead: { readonly length: Feet; readonly layout: CableLayout } | null;
  readonly findings: readonly Finding[];
}

/** Lays a set; where it does not fit, looks for the longest made that does. */
export function laySet(plan: SitePlan, set: MeasuredSet): SetOnPlan {
  const about = { setKey: set.key, setName: set.name };
  const cable = layoutCableOf(set);
  const outcome = layCable(plan, set.areas, cable);
  if (outcome.ok) {
    const { layout } = outcome;
    const reach = coldLeadReach(set.coldLeadLength, inches(layout.coldLeadOutside), set.coldLeadRun);
    const laid = cableLayout(set.heatedLength, { laid: true, closest: inches(layout.measure.closest) });
    return { ...about, layout, instead: null, findings: [laid, reach] };
  }
  const fits = outcome.fits && {
    shortest: feet(outcome.fits.shortest / 12),
    longest: feet(outcome.fits.longest / 12),
  };
  return {
    ...about,
    layout: null,
    instead: fits && fitting(plan, set, fits),
    findings: [cableLayout(set.heatedLength, { laid: false, why: outcome.message, fits })],
  };
}

/** Sets tried before giving up: each takes about a second to lay. */
const TRIED = 3;

function fitting(
  plan: SitePlan,
  set: MeasuredSet,
  { shortest, longest }: { shortest: Feet; longest: Feet },
): SetOnPlan['instead'] {
  if (set.heatedLength >= shortest && set.heatedLength <= longest) return null;
  const cable = layoutCableOf(set);
  const perFoot = set.watts / set.heatedLength;
  for (const length of lengthsWithin(shortest, longest).reverse().slice(0, TRIED)) {
    const outcome = layCable(plan, set.areas, { ...cable, length: length * 12, watts: perFoot * length });
    if (outcome.ok) return { length, layout: outcome.layout };
  }
  return null;
}
