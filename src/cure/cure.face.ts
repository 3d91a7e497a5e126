/* What other features may use of placements and their cure. */
export { firstFreezeOf, measuredStrengthOf } from './measured-cure.js';
