/* What other features may use of heating sets. */
export { HeatingReader } from './heating-reader.js';
export { HeatingSet } from './heating-set.model.js';
export { type HookupNeeds, needsByHookup } from './needs/needs-of-sets.js';
export { failingReadings, forbidsStage } from './readings/failing.js';
