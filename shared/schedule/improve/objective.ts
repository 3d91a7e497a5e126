import type { Job, Plan, PlanInput } from '../model.js';

/** How much each part of the objective weighs, in slots of a job's finish. */
export interface ObjectiveWeights {
  /** A phase that has no place. */
  readonly unplanned: number;
  /** A slot by which a job of the first priority misses its due date. */
  readonly lateness: number;
  /** A slot of a job's finish. */
  readonly finish: number;
  /** A slot by which a phase leaves its commitment. */
  readonly disturbance: number;
  /** A crew that goes on at another site than where it was. */
  readonly crewMoves: number;
}

/** Lateness before finish, finish before what was promised, and that before where crews go. */
export const DEFAULT_WEIGHTS: ObjectiveWeights = {
  unplanned: 1e6,
  lateness: 100,
  finish: 1,
  disturbance: 0.25,
  crewMoves: 2,
};

/** What makes one plan better than another; less is better in every part. */
export interface Objective {
  /** Phases without a place. */
  readonly unplanned: number;
  /** Slots after the due date, the job's weight counted: the sum over all jobs. */
  readonly lateness: number;
  /** Slots from now to the finish of each job: the sum. */
  readonly finish: number;
  /** Slots between committed and planned starts: the sum; a crew other than the promised one counts as a day. */
  readonly disturbance: number;
  /** How often a crew goes on at another site. */
  readonly crewMoves: number;
  /** All parts by their weights. */
  readonly total: number;
}

const DAY = 96;

/** A job of the first priority (0) weighs 1, of the second ½, of the third ⅓. */
export function weightOf(job: Job): number {
  return 1 / (1 + Math.max(0, job.priority));
}

/** Measures a plan of an input. Finished and started phases count with where they are. */
export function objectiveOf(
  input: PlanInput,
  plan: Pick<Plan, 'phases' | 'jobs'>,
  weights: ObjectiveWeights = DEFAULT_WEIGHTS,
): Objective {
  const jobs = new Map(input.jobs.map((job) => [job.id, job]));
  let lateness = 0;
  let finish = 0;
  for (const planned of plan.jobs) {
    if (planned.finish === null) continue;
    finish += Math.max(0, planned.finish - input.now);
    if (planned.due !== null && planned.finish > planned.due) {
      lateness += (planned.finish - planned.due) * weightOf(jobs.get(planned.id)!);
    }
  }
  const unplanned = plan.phases.reduce((sum, { state }) => sum + Number(state === 'unplanned'), 0);
  const disturbance = disturbanceOf(input, plan);
  const crewMoves = crewMovesOf(plan);
  const total =
    unplanned * weights.unplanned +
    lateness * weights.lateness +
    finish * weights.finish +
    disturbance * weights.disturbance +
    crewMoves * weights.crewMoves;
  return { unplanned, lateness, finish, disturbance, crewMoves, total };
}

function disturbanceOf(input: PlanInput, plan: Pick<Plan, 'phases'>): number {
  const committed = new Map(
    input.phases.flatMap(({ id, commitment }) => (commitment ? [[id, commitment] as const] : [])),
  );
  let sum = 0;
  for (const phase of plan.phases) {
    const promised = committed.get(phase.id);
    if (!promised || phase.start === null || phase.state !== 'planned') continue;
    sum += Math.abs(phase.start - promised.start);
    if (promised.crewId !== undefined && promised.crewId !== phase.crewId) sum += DAY;
  }
  return sum;
}

function crewMovesOf(plan: Pick<Plan, 'phases'>): number {
  const busy = plan.phases
    .filter((phase) => phase.crewId !== null && phase.start !== null && phase.state !== 'done')
    .sort((a, b) => a.start! - b.start!);
  const at = new Map<string, string>();
  let moves = 0;
  for (const { crewId, jobId } of busy) {
    const before = at.get(crewId!);
    if (before !== undefined && before !== jobId) moves++;
    at.set(crewId!, jobId);
  }
  return moves;
}
