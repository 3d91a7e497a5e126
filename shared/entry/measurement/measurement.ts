import type { Days } from '../../units/time.js';
import type { Megaohms, Ohms, OhmsPerFoot, Volts, Watts } from '../../units/electrical.js';
import type { Fahrenheit } from '../../units/temperature.js';
import type { Feet, Inches } from '../../units/length.js';
import type { MeasuredArea } from './area.js';
import type { EntryDesign } from './design.js';
import type { SitePlan } from '../geometry/site-plan.js';

/** The layers over the block or the walk's base, bottom to top. */
export interface BuildUp {
  /** Mortar bed over mesh and cable. */
  readonly bed: Inches;
  readonly stone: Inches;
  /** Base under the cable of a walk. */
  readonly walkBase: Inches;
}

/** The footing under landing and steps. */
export interface FootingMeasure {
  /** Length of footing to be poured. */
  readonly length: Feet;
  readonly width: Inches;
  readonly thickness: Inches;
  /** Bottom of the footing below finished grade. */
  readonly bottom: Inches;
}

/** How deep frost goes at the site, and who says so. */
export interface FrostDepth {
  readonly depth: Inches;
  readonly source: string;
}

/** A heating set as delivered, and the areas its uncut cable runs through, in turn. */
export interface MeasuredSet {
  readonly key: string;
  readonly name: string;
  readonly areas: readonly string[];
  readonly watts: Watts;
  readonly volts: Volts;
  readonly ohms: Ohms;
  /** Temperature at which the label's resistance holds. */
  readonly labelTemperature: Fahrenheit;
  readonly heatedLength: Feet;
  readonly coldLeadLength: Feet;
  /** Resistance of one conductor of the cold lead; 0 when the label's value is taken with the lead. */
  readonly coldLeadOhmsPerFoot: OhmsPerFoot;
  /** Temperature coefficient of the heating conductor, per kelvin. */
  readonly temperatureCoefficient: number;
  /** Tolerance of the label's resistance as fractions: −0.05 and 0.10 unless the set says otherwise. */
  readonly toleranceLow: number;
  readonly toleranceHigh: number;
  readonly minInsulation: Megaohms;
  readonly insulationTestVolts: Volts;
  readonly minBend: Inches | null;
  /** Days the bed cures before the set may be energised. */
  readonly cureDays: Days;
  /** Cold lead from the sleeve to the box, without the free length in the box. */
  readonly coldLeadRun: Feet;
}

/** An entry as measured on a site visit, checked and with units. */
export interface EntryMeasurement {
  readonly version: 1;
  readonly frost: FrostDepth;
  /** Null when the job has neither landing nor steps. */
  readonly footing: FootingMeasure | null;
  readonly buildUp: BuildUp;
  readonly areas: readonly MeasuredArea[];
  readonly heatingSets: readonly MeasuredSet[];
  readonly design: EntryDesign;
  /** How the areas lie to each other; null when no plan was drawn, and then no cable is laid out. */
  readonly sitePlan: SitePlan | null;
}
