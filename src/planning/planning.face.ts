/* What other features may use of the plan. */
export { Proposal } from './proposals/proposal.model.js';
