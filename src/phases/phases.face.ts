/* What other features may use of running phases; none of these files imports another feature's. */
export { BeforePredecessor } from './errors/before-predecessor.js';
export { CrewBusy } from './errors/crew-busy.js';
export { PredecessorUnfinished } from './errors/predecessor-unfinished.js';
export { WrongState } from './errors/wrong-state.js';
export { PhaseChanged } from './phase-changed.model.js';
