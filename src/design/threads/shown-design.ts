import type { EntryDrawing } from '../../../shared/drawing/entry-drawings.js';
import type { CircuitPlan } from '../../../shared/heating/circuit/circuit-plan.js';
import type { LayoutMeasure } from '../../../shared/heating/layout/measure/measure-layout.js';
import type { FootingDesign } from '../../../shared/entry/design/design-entry.js';
import type { AreaHeat } from '../../../shared/entry/design/heat-of-entry.js';
import type { EntryMeasurement } from '../../../shared/entry/measurement/measurement.js';
import type { RiserPlan } from '../../../shared/entry/risers/riser-plan.js';
import type { Finding } from '../../../shared/entry/rules/finding.js';

/** A heating set on the plan, as measured from the path; the path itself is in its drawing. */
export interface ShownCable {
  readonly setKey: string;
  readonly setName: string;
  /** Length of the set that the figures and the drawing are of, ft; null when none can be laid. */
  readonly feet: number | null;
  /** Whether that is the measured set, or another that would fit in its place. */
  readonly asMeasured: boolean;
  readonly measure: LayoutMeasure | null;
  /** From the sleeve to the cold joint, in. */
  readonly coldLeadOutside: number | null;
}

/** The design of an entry as callers see it: plain data. */
export interface ShownDesign {
  readonly measurement: EntryMeasurement;
  readonly heat: readonly AreaHeat[];
  readonly cables: readonly ShownCable[];
  readonly circuits: CircuitPlan | null;
  readonly risers: RiserPlan | null;
  readonly footing: FootingDesign | null;
  readonly drawings: readonly EntryDrawing[];
  readonly findings: readonly Finding[];
}
