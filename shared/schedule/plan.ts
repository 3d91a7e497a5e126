import { compareIds } from './by-id.js';
import { checkInput } from './check-input.js';
import { orderNetwork } from './cycles.js';
import { computeFloats, type Floats } from './floats.js';
import { generate } from './generate.js';
import { isUndated } from './lower-bounds.js';
import { mergeIntervals } from './intervals.js';
import type { Interval, Job, Plan, PlanInput, PlannedJob, PlannedPhase } from './model.js';
import type { Outcome, Placement } from './outcome.js';
import { lateConflicts, orderConflicts } from './plan-conflicts.js';
import { Problem, type Node } from './problem.js';
import { isFrozen, isPinned } from './rank.js';
import { slot } from './slot.js';
import type { State } from './state.js';

/**
 * Computes dates for everything now: one deterministic pass. Equal input, in whatever order its lists come, gives an equal plan.
 * What cannot be had is a conflict in the plan.
 *
 * @throws PlanInputError when the input names things that are not in it
 */
export function plan(input: PlanInput): Plan {
  checkInput(input);
  const problem = new Problem(input);
  const order = orderNetwork(problem);
  const { state, conflicts } = generate(problem, order);
  const floats = computeFloats(state, order.sequence);
  const phases = problem.nodes.map((node) => plannedPhase(state, node, floats[node.index]!));
  const byJob = new Map<string, PlannedPhase[]>(problem.jobs.map((job) => [job.id, []]));
  for (const phase of phases) byJob.get(phase.jobId)!.push(phase);
  const jobs = problem.jobs.map((job) => plannedJob(job, byJob.get(job.id)!));
  const inspections = problem.visits.map((visit) => {
    const { conflicts: _, ...planned } = state.visitOf(visit);
    return { id: visit.inspection.id, jobId: visit.inspection.jobId, ...planned };
  });
  return {
    now: input.now,
    phases,
    inspections,
    jobs,
    conflicts: orderConflicts([
      ...order.conflicts,
      ...conflicts,
      ...state.outcomes.flatMap((outcome) => outcome!.conflicts),
      ...lateConflicts(state, jobs),
    ]),
  };
}

function plannedPhase(state: State, node: Node, floats: Floats | null): PlannedPhase {
  const outcome: Outcome = state.outcomes[node.index]!;
  if (!outcome.placed) {
    return {
      id: node.id,
      jobId: node.job.id,
      state: 'unplanned',
      start: null,
      finish: null,
      crewId: null,
      segments: [],
      totalFloat: null,
      freeFloat: null,
      critical: false,
      fixedBy: null,
      reason: outcome.reason,
      ties: [],
      ready: null,
      readyReason: outcome.reason,
      trail: [],
      weatherUnknown: false,
      assumes: [],
    };
  }
  const { start, finish } = outcome;
  return {
    id: node.id,
    jobId: node.job.id,
    state: outcome.state,
    start,
    finish,
    crewId: outcome.crew?.id ?? null,
    segments: segmentsOf(state, node, outcome),
    totalFloat: floats?.total ?? null,
    freeFloat: floats?.free ?? null,
    critical: floats !== null && floats.total <= 0,
    fixedBy: fixedBy(state, node, outcome),
    reason: outcome.reason,
    ties: [],
    ready: outcome.ready,
    readyReason: outcome.readyReason,
    trail: outcome.trail,
    weatherUnknown: outcome.state !== 'done' && (node.weather?.unknownIn(start, finish) ?? false),
    assumes: outcome.state === 'planned' ? undatedGates(node) : [],
  };
}

function fixedBy(state: State, node: Node, { state: phase, start }: Placement): PlannedPhase['fixedBy'] {
  if (phase !== 'planned') return null;
  if (isPinned(node)) return start === node.phase.facts!.pinnedStart ? 'pin' : null;
  return isFrozen(node, state.problem.input) && start === node.phase.commitment!.start ? 'commitment' : null;
}

/** Where it runs: pauses only where work may pause, and never in what has already happened. */
function segmentsOf(state: State, node: Node, placement: Placement): Interval[] {
  const { start, finish, hours } = placement;
  const { duration } = node.phase;
  if (finish <= start) return [];
  const pauses =
    duration.kind === 'work' && (duration.mode === 'interruptible' || placement.state === 'started');
  if (!pauses || placement.state === 'done') return [{ from: start, to: finish }];
  if (placement.state === 'planned') return hours.workable.between(start, finish);
  const now = slot(Math.max(start, Math.min(finish, state.problem.input.now)));
  return mergeIntervals([{ from: start, to: now }, ...hours.workable.between(now, finish)]);
}

function undatedGates(node: Node): string[] {
  const ids = (node.phase.gates ?? []).filter(isUndated).map((gate) => gate.id);
  return [...new Set(ids)].sort(compareIds);
}

function plannedJob(job: Job, phases: readonly PlannedPhase[]): PlannedJob {
  let finish: PlannedJob['finish'] = null;
  let complete = true;
  for (const phase of phases) {
    if (phase.finish === null) complete = false;
    else if (finish === null || phase.finish > finish) finish = phase.finish;
  }
  return { id: job.id, finish, complete, due: job.due ?? null };
}
