import { published, type Source } from '../entry/source.js';
import { celsius, type Celsius } from '../units/temperature.js';

/** Where the formula comes from. */
export const MIXING_SOURCE: Source = published('ACI 306R; PCA, Design and Control of Concrete Mixtures');

/** A part of a batch; kilograms and °C. */
export interface BatchPart {
  readonly mass: number;
  readonly temperature: Celsius;
}

/** What goes into a batch; free water is the moisture on the aggregate. */
export interface Batch {
  readonly aggregate: BatchPart;
  readonly cement: BatchPart;
  readonly water: BatchPart;
  readonly freeWater: BatchPart;
}

/** Heat that aggregate and cement keep, against water. */
const SOLIDS = 0.22;

/** Temperature of a batch as it comes out of the mixer, from the heat of its parts. No ice, no frozen aggregate. */
export function mixingTemperature({ aggregate, cement, water, freeWater }: Batch): Celsius {
  const parts = [
    [SOLIDS, aggregate],
    [SOLIDS, cement],
    [1, water],
    [1, freeWater],
  ] as const;
  const heat = parts.reduce((sum, [share, part]) => sum + share * part.mass * part.temperature, 0);
  const mass = parts.reduce((sum, [share, part]) => sum + share * part.mass, 0);
  if (!(mass > 0)) throw new RangeError('A batch needs a mass over 0 kg; give what goes into it');
  return celsius(heat / mass);
}
