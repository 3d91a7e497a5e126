/* What other features may use of heating sets. */
export { CableReading } from './cable-reading.model.js';
export { HeatingSet } from './heating-set.model.js';
