/* What other features may use of the plan. */
export { readRows } from './gather/read-rows.js';
export type { PlanningRows } from './gather/rows.js';
export { type ComputedPlan, computePlan } from './replan/compute-plan.js';
export { Improver } from './improve/improver.js';
export { Proposal } from './proposals/proposal.model.js';
