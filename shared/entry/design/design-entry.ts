import type { CircuitPlan } from '../../heating/circuit/circuit-plan.js';
import { buyList } from '../buying/buy-list.js';
import type { BuyLine } from '../buying/buy-item.js';
import { exposedConcrete, type ExposedConcrete } from '../footing/exposed-concrete.js';
import { FOOTING_CHECKLIST, type FootingItem } from '../footing/footing-checklist.js';
import type { EntryMeasurement } from '../measurement/measurement.js';
import { jobQuantities } from '../quantities/job-quantities.js';
import type { Quantities } from '../quantities/quantity-names.js';
import type { RiserPlan } from '../risers/riser-plan.js';
import { blockedPhases } from '../rules/blocked-phases.js';
import { designFindings } from '../rules/design-findings.js';
import type { Finding } from '../rules/finding.js';
import { circuitsOfEntry } from './circuits-of-entry.js';
import { heatOfEntry, type AreaHeat } from './heat-of-entry.js';
import { laySet, type SetOnPlan } from './lay-set.js';
import { risersOfEntry } from './risers-of-entry.js';

/** What stands under landing and steps. */
export interface FootingDesign {
  /** What concrete in the weather must be where it freezes hardest, by the code's map: the cautious class. */
  readonly concrete: ExposedConcrete;
  readonly checklist: readonly FootingItem[];
}

/** The whole design of an entry, from its measurement alone. */
export interface DesignedEntry {
  readonly measurement: EntryMeasurement;
  /** Of each heated area; none where no snowfall to design for is given. */
  readonly heat: readonly AreaHeat[];
  /** Null where the supply is not given. */
  readonly circuits: CircuitPlan | null;
  /** Every heating set on the plan; none where no plan was drawn. */
  readonly sets: readonly SetOnPlan[];
  /** Null where the heights are not given, or several flights share the rise. */
  readonly risers: RiserPlan | null;
  /** Null where nothing stands on a footing. */
  readonly footing: FootingDesign | null;
  readonly quantities: Quantities;
  readonly buyList: readonly BuyLine[];
  /** Of all rules, those of the layout last. */
  readonly findings: readonly Finding[];
}

/**
 * Designs an entry from what was measured: heat, circuits, cable on the plan, risers, footing, quantities, what to buy, and
 * what the rules say. Laying the cable takes about a second a set; everything else next to nothing. Equal input gives equal
 * output.
 */
export function designEntry(measurement: EntryMeasurement): DesignedEntry {
  const { sitePlan, footing, heatingSets } = measurement;
  const sets = sitePlan ? heatingSets.map((set) => laySet(sitePlan, set)) : [];
  return {
    measurement,
    heat: heatOfEntry(measurement),
    circuits: circuitsOfEntry(measurement),
    sets,
    risers: risersOfEntry(measurement),
    footing: footing && { concrete: exposedConcrete('severe'), checklist: FOOTING_CHECKLIST },
    quantities: jobQuantities(measurement),
    buyList: buyList(measurement),
    findings: [
      ...designFindings(measurement),
      ...sets.flatMap((set, i) => layoutFindings(set, heatingSets[i]?.areas ?? [])),
    ],
  };
}

/** What the rules say about a set on the plan, under its name, with what a broken rule blocks. */
function layoutFindings({ setName, findings }: SetOnPlan, areas: readonly string[]): Finding[] {
  return findings.map((finding) => ({
    ...finding,
    text: `${setName}: ${finding.text}`,
    blocks: blockedPhases(finding),
    areas,
  }));
}
