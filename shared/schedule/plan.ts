import type { Plan, PlanInput } from './model.js';
import { Planner } from './planner.js';

/**
 * Computes dates for everything now: one deterministic pass. Equal input, in whatever order its lists come, gives an equal plan.
 * What cannot be had is a conflict in the plan.
 *
 * @throws PlanInputError when the input names things that are not in it
 */
export function plan(input: PlanInput): Plan {
  return Planner.of(input).plan;
}
