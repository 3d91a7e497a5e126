/* What other features may use of hold points and inspections. */
export { ClearanceMissing } from './errors/clearance-missing.js';
export { HoldPointOpen } from './errors/hold-point-open.js';
export { InspectionOutstanding } from './errors/inspection-outstanding.js';
export { LimitExceeded } from './errors/limit-exceeded.js';
export { NotWaivable } from './errors/not-waivable.js';
export { ReadingMissing } from './errors/reading-missing.js';
export { Finding } from './finding.model.js';
export { clearanceFault } from './clearance-standing.js';
export { findingOf } from './finding-of.js';
export { HoldPoint } from './hold-point.model.js';
export { HoldPointReader } from './hold-point-reader.js';
export { Inspection } from './inspection.model.js';
export { InspectionReader } from './inspection-reader.js';
export { ReadingStage } from './reading-stage.js';
