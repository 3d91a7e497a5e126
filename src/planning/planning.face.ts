/* What other features may use of the plan. */
export { Commitment } from './commitment.model.js';
export { PlanConflict } from './plan-conflict.model.js';
export { PlannedPhase } from './planned-phase.model.js';
export { Proposal } from './proposal.model.js';
export { Reason } from './reason.model.js';
