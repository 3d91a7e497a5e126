import type { Plan, PlanInput } from '../../../shared/schedule/model.js';
import { Pass } from '../../../shared/schedule/pass.js';
import { frameOf, gather } from '../gather/gather.js';
import type { PlanningRows } from '../gather/rows.js';
import { FIRST_HORIZON_DAYS, type TimeFrame } from '../gather/time-frame.js';

/** Past this nobody plans an entry; what does not fit is a conflict. */
const LAST_HORIZON_DAYS = 4 * FIRST_HORIZON_DAYS;

/** A plan with the axis and the input it was computed on. */
export interface ComputedPlan {
  readonly frame: TimeFrame;
  readonly input: PlanInput;
  /** The same with promised phases held to their crews: `plan` is the plan of this, slot for slot. */
  readonly planned: PlanInput;
  readonly plan: Plan;
  /** The pass that made it. */
  readonly pass: Pass;
}

/** Plans the rows at a moment, in the given order where there is one; the horizon grows until everything fits. */
export function computePlan(
  rows: PlanningRows,
  nowMs: number,
  order?: readonly string[] | null,
): ComputedPlan {
  for (let days = FIRST_HORIZON_DAYS; ; days *= 2) {
    const frame = frameOf(rows, nowMs, days);
    const input = { ...gather(rows, frame), ...(order ? { order } : {}) };
    const made = planKeepingCrews(input);
    const short = made.plan.conflicts.some(({ code }) => code === 'beyondHorizon');
    if (!short || days >= LAST_HORIZON_DAYS) return { frame, input, ...made };
  }
}

/**
 * A promise names the crew too. Outside the freeze window the engine would change it for one that is through a little earlier; so promised phases
 * are planned with their own crew first, and only those that come later than promised may have another.
 */
export function planKeepingCrews(input: PlanInput): Pick<ComputedPlan, 'planned' | 'plan' | 'pass'> {
  const own = withOwnCrews(input, () => true);
  const first = new Pass(own);
  const starts = new Map(first.plan.phases.map(({ id, start }) => [id, start]));
  const late = new Set(
    input.phases
      .filter(({ id, commitment }) => commitment?.crewId !== undefined && starts.get(id) !== commitment.start)
      .map(({ id }) => id),
  );
  if (late.size === 0) return { planned: own, plan: first.plan, pass: first };
  const planned = withOwnCrews(input, (id) => !late.has(id));
  const pass = new Pass(planned);
  return { planned, plan: pass.plan, pass };
}

function withOwnCrews(input: PlanInput, keep: (phaseId: string) => boolean): PlanInput {
  const phases = input.phases.map((phase) => {
    const own = phase.commitment?.crewId;
    const free = phase.crewId === undefined && phase.facts?.actualStart === undefined;
    return free && own !== undefined && keep(phase.id) ? { ...phase, crewId: own } : phase;
  });
  return { ...input, phases };
}
