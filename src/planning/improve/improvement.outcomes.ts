import { WrongState } from '../../phases/phases.face.js';
import { outcomeUnion } from '../../platform/outcomes/outcome-union.js';
import { ImprovementChanged } from './improvement.model.js';
import { ImprovementRunning } from './improvement-running.js';

/** What `startImprovement` answers. */
export const StartImprovementOutcome = outcomeUnion('StartImprovementOutcome', ImprovementChanged, [
  ImprovementRunning,
]);

/** What `stopImprovement` answers. */
export const StopImprovementOutcome = outcomeUnion('StopImprovementOutcome', ImprovementChanged, [
  WrongState,
]);
