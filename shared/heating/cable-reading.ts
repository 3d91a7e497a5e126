import type { ReadingStage } from '../entry/template/words.js';
import type { Megaohms, Ohms, Volts } from '../units/electrical.js';
import type { Fahrenheit } from '../units/temperature.js';
import type { EpochMs } from '../units/time.js';

/** One resistance and insulation test of a heating set. */
export interface CableReading {
  readonly stage: ReadingStage;
  /** The area just laid or covered; null at the stages that belong to no area. */
  readonly areaKey: string | null;
  readonly at: EpochMs;
  /** Conductor to conductor, cold lead counted in. */
  readonly ohms: Ohms;
  /** Conductors to ground. */
  readonly megaohms: Megaohms;
  readonly testVolts: Volts;
  readonly cableTemperature: Fahrenheit;
}
