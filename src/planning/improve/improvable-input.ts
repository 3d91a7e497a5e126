import type { PlanInput } from '../../../shared/schedule/model.js';

/**
 * What a search may plan: promises inside the freeze window stay, those after it may move either way, at the price that the objective
 * puts on it. A plan in force never pulls a promised phase forward by itself; a proposal may ask for it.
 */
export function improvableInput(input: PlanInput): PlanInput {
  const phases = input.phases.map((phase) => {
    const gates = phase.gates?.filter((gate) => gate.kind !== 'notBefore' || gate.cause !== 'commitment');
    return gates?.length === phase.gates?.length ? phase : { ...phase, gates };
  });
  return { ...input, phases };
}
