/* What other features may use of placements and their cure. */
export { firstFreezeOf, measuredStrengthOf } from './measured-cure.js';
export { Placement } from './placement.model.js';
export { PlacementReader } from './placement-reader.js';
export type { ReadPlacement } from './stored-placement.js';
export { StrengthEstimate } from './strength-estimate.model.js';
export { TemperatureReading } from './temperature-reading.model.js';
