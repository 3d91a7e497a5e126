import type { MeasuredArea } from '../measurement/area.js';
import type { EntryMeasurement, MeasuredSet } from '../measurement/measurement.js';
import type { Quantities } from '../quantities/quantity-names.js';
import type { TemplatePhase } from '../template/template.js';

/** One phase of a job before it is written down: its kind, and the area or heating set it is for. */
export interface ExpandedPhase {
  readonly key: string;
  readonly of: TemplatePhase;
  readonly area: MeasuredArea | null;
  /** The set the phase is for, or that runs through its area. */
  readonly set: MeasuredSet | null;
  readonly quantities: Quantities;
}

/** The set whose cable runs through an area. */
export const setOfArea = (measurement: EntryMeasurement, area: MeasuredArea): MeasuredSet | null =>
  measurement.heatingSets.find((set) => set.areas.includes(area.key)) ?? null;

/** Place of the phase's area in the turn of its set; −1 when no set runs through it. */
export const turnOf = (phase: ExpandedPhase): number =>
  phase.area && phase.set ? phase.set.areas.indexOf(phase.area.key) : -1;
