/* What other features may use of the owner's week. */
export { OwnerWeek } from './owner-week.model.js';
