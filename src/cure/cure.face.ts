/* What other features may use of placements and their cure. */
export { Placement } from './placement.model.js';
export { StrengthEstimate } from './strength-estimate.model.js';
export { TemperatureReading } from './temperature-reading.model.js';
