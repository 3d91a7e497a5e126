/* What other features may use of hold points and inspections. */
export { Finding } from './finding.model.js';
export { HoldPoint } from './hold-point.model.js';
export { HoldPointItem, MeasuredValue } from './hold-point-item.model.js';
export { Inspection, InspectionConnection, PlannedVisit } from './inspection.model.js';
