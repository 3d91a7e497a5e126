/* What other features may use of placements and their cure. */
export { firstFreezeOf, measuredReleaseOf, measuredStrengthOf } from './measured-cure.js';
