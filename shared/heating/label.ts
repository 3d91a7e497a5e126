import type { Megaohms, Ohms, OhmsPerFoot, Volts } from '../units/electrical.js';
import type { Feet } from '../units/length.js';
import type { Fahrenheit } from '../units/temperature.js';

/** What readings of a heating set are held against. A measured set of the entry is one. */
export interface HeatingLabel {
  readonly ohms: Ohms;
  /** Temperature at which the label's resistance holds. */
  readonly labelTemperature: Fahrenheit;
  /** Temperature coefficient of the heating conductor, per kelvin. The product's own; 0 for none. */
  readonly temperatureCoefficient: number;
  /** Tolerance as fractions, as in −0.05 and 0.10. */
  readonly toleranceLow: number;
  readonly toleranceHigh: number;
  readonly coldLeadLength: Feet;
  /** Resistance of one conductor of the cold lead; 0 when the label counts the lead in. */
  readonly coldLeadOhmsPerFoot: OhmsPerFoot;
  readonly minInsulation: Megaohms;
  readonly insulationTestVolts: Volts;
}
