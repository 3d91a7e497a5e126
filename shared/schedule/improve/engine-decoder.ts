import { sortedById } from '../by-id.js';
import type { Plan, PlanInput } from '../model.js';
import { Pass } from '../pass.js';
import type { Decoder, Direction } from './decoder.js';
import { inOrder } from './in-order.js';
import { objectiveOf, type ObjectiveWeights } from './objective.js';

/**
 * Passes of the planning engine itself: hours, weather, crews, equipment, gates and facts as they are. Only forward: what lies behind
 * today is no mirror of what lies ahead. The fitness is the whole objective.
 */
export class EngineDecoder implements Decoder {
  readonly activities: number;
  readonly directions = 1;
  readonly durations: Int32Array;
  readonly loads: Float64Array;
  /** Phase ids, activity by activity. */
  readonly ids: readonly string[];
  private readonly fromHere: Int32Array;
  /** Everything compiled once, for every order. */
  private readonly pass: Pass;

  /**
   * @param first the plan of the input as it is: tails and durations are read from it
   * @param bound no plan's objective can be less
   */
  constructor(
    private readonly input: PlanInput,
    first: Plan,
    readonly bound: number,
    private readonly weights: ObjectiveWeights,
  ) {
    this.pass = new Pass(input);
    this.ids = sortedById(input.phases).map(({ id }) => id);
    this.activities = this.ids.length;
    const phases = new Map(first.phases.map((phase) => [phase.id, phase]));
    const due = new Map(input.jobs.map((job) => [job.id, job.due]));
    const ends = new Map(first.jobs.map((job) => [job.id, job.finish]));
    this.durations = Int32Array.from(this.ids, (id) => {
      const { start, finish } = phases.get(id)!;
      return start === null ? 0 : finish! - start;
    });
    this.loads = Float64Array.from(sortedById(input.phases), (phase) =>
      phase.trade === undefined && phase.crewId === undefined ? 0 : 1,
    );
    // The tail on the tighter of due date and the job's own end: what is left between a phase's start and then, less its float.
    const latest = first.phases.reduce((most, { finish }) => Math.max(most, finish ?? 0), 0);
    this.fromHere = Int32Array.from(this.ids, (id) => {
      const { jobId, start, totalFloat } = phases.get(id)!;
      if (start === null) return 0;
      const end = ends.get(jobId)!;
      return latest - Math.min(due.get(jobId) ?? end, end) + (end - start) - totalFloat!;
    });
  }

  tails(): Int32Array {
    return this.fromHere;
  }

  decode(_direction: Direction, keys: Float64Array, _delay: number, starts: Int32Array): number {
    const made = this.pass.whole(inOrder(this.ids, keys));
    made.phases.forEach(({ start }, i) => (starts[i] = start ?? this.input.horizon));
    return objectiveOf(this.input, made, this.weights).total;
  }
}
