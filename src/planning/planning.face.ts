/* What other features may use of the plan. */
export { Commitment } from './commitments/commitment.model.js';
export { PlanConflict } from './plan-conflict.model.js';
export { PlannedPhase } from './planned-phase.model.js';
export { PlanReader } from './plan-reader.js';
export { Proposal } from './proposals/proposal.model.js';
export { Reason } from './reason.model.js';
