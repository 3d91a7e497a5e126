import { checkInput, checkPhase } from './check-input.js';
import { orderNetwork, type Order } from './cycles.js';
import { FloatPass } from './floats.js';
import { generate, type Generator } from './generate.js';
import { impossibleLags, type ImpossibleLags } from './impossible-lags.js';
import type {
  Conflict,
  Job,
  Plan,
  PlanInput,
  PlannedInspection,
  PlannedJob,
  PlannedPhase,
  Reason,
} from './model.js';
import type { Outcome } from './outcome.js';
import { lateConflicts, orderConflicts } from './plan-conflicts.js';
import { plannedPhase } from './planned-phase.js';
import { isFixed, Problem, type Node } from './problem.js';
import { patchFor } from './problem-patch.js';
import { Ranking } from './rank.js';
import { Replay, type Touched } from './replay.js';
import { samePlacement } from './same-placement.js';
import { tiesOf } from './ties.js';
import { BareWalk } from './walk.js';

/**
 * A pass of planning that is kept: everything compiled, and every place, so that the pass over a slightly changed input need only settle
 * what the change reaches. The answer is the same either way.
 */
export class Pass {
  private readonly problem: Problem;
  private readonly order: Order;
  /** Indexes of phases, prerequisites first. */
  private readonly places: Int32Array;
  private ranking: Ranking;
  private impossible!: ImpossibleLags;
  private generator!: Generator;
  private floats!: FloatPass;
  private made!: Plan;
  /** Places from which the phases of the plan were written; none while that is not so. */
  private written: readonly (Outcome | undefined)[] = [];

  /**
   * @throws PlanInputError when the input names things that are not in it
   */
  constructor(input: PlanInput) {
    checkInput(input);
    this.problem = new Problem(input);
    this.order = orderNetwork(this.problem);
    this.places = Int32Array.from(this.order.sequence, ({ index }) => index);
    this.ranking = new Ranking(this.problem, this.order.sequence);
    this.placeAll(NOTHING);
  }

  /** The plan of the input it stands at. */
  get plan(): Plan {
    return this.made;
  }

  /** Everything placed anew over what is compiled; with `order`, in that order instead of the input's own. */
  whole(order = this.problem.input.order): Plan {
    const { problem } = this;
    if (order !== problem.input.order) {
      problem.input = { ...problem.input, order };
      this.ranking = new Ranking(problem, this.order.sequence);
    }
    return this.placeAll(NOTHING);
  }

  /**
   * @param changed phases that have changed since the plan was written
   */
  private placeAll(changed: ReadonlySet<Node>): Plan {
    const { problem, ranking } = this;
    this.impossible = impossibleLags(problem, this.order.onCycle);
    this.generator = generate(problem, this.order, ranking, this.impossible.edges);
    this.floats = new FloatPass(this.generator.state, this.places);
    this.floats.all();
    const phases = problem.nodes.map((node) => this.writePhase(node, changed.has(node)));
    const jobs = problem.jobs.map((job, i) => plannedJob(problem, job, i, phases));
    return this.write(phases, jobs);
  }

  /** Phases in the order in which they were given their places: a phase goes around those before it and not around those after. */
  get settled(): readonly string[] {
    return this.generator.order.nodes.map(({ id }) => id);
  }

  /**
   * What else binds each phase at the very instant at which its reason does; it starts earlier only when all of them give way. Takes
   * about as long as two whole passes.
   *
   * @returns by phase, those only that have any
   */
  ties(): ReadonlyMap<string, readonly Reason[]> {
    const ties = new Map<string, readonly Reason[]>();
    generate(this.problem, this.order, this.ranking, this.impossible.edges, (state, node, place, floors) => {
      const others = tiesOf(state, node, place, floors);
      if (others.length > 0) ties.set(node.id, others);
      else ties.delete(node.id);
    });
    return ties;
  }

  /**
   * Goes over to a changed input.
   * @returns undefined when so much has changed that it has to be compiled anew; then nothing has been done
   * @throws PlanInputError when a changed phase cannot be used
   */
  to(next: PlanInput): Plan | undefined {
    const patch = patchFor(this.problem, next);
    if (!patch) return undefined;
    for (const phase of patch.phases.values()) checkPhase(phase);
    const pins = [...patch.phases].flatMap(([node, { facts }]) =>
      node.pinned || facts?.pinnedStart !== undefined ? [node] : [],
    );
    const changed = this.problem.apply(next, patch);
    const moved = this.ranking.update(changed);
    const renewed = this.canResume(changed, moved, pins) && this.resume({ changed, moved, pins });
    return renewed ? this.renew(renewed) : this.placeAll(changed);
  }

  /**
   * Whether places of the pass before can be kept: not where a visit may move for the sake of what waits for it, nor where what follows soon
   * puts off what comes before, nor where a new pin meets other fixed starts.
   */
  private canResume(changed: ReadonlySet<Node>, moved: ReadonlySet<Node>, pins: readonly Node[]): boolean {
    const { nodes, visits } = this.problem;
    if (!this.generator.regular || visits.some(({ inspection }) => inspection.validFor !== undefined))
      return false;
    if (nodes.some(({ mosts }) => mosts.length > 0)) return false;
    if ([...changed, ...moved].some(({ started }) => started)) return false;
    if (pins.length === 0) return true;
    const [pin] = pins;
    return (
      pins.length === 1 && pin!.holds.length === 0 && nodes.every((node) => node === pin || !isFixed(node))
    );
  }

  /**
   * Settles what a change reaches.
   * @returns phases placed anew; undefined when a whole pass is needed
   */
  private resume(touched: Touched): ReadonlySet<Node> | undefined {
    const { generator, problem, ranking } = this;
    const { order } = generator;
    if (touched.moved.size > 0) generator.order = BareWalk.of(problem, ranking, order.facts);
    this.written = [];
    return new Replay(problem, generator, touched).run(order);
  }

  /** The plan with some phases written anew; the others are the very same objects. */
  private renew(renewed: ReadonlySet<Node>): Plan {
    const { problem, floats } = this;
    const phases = this.made.phases.slice();
    for (const node of [...renewed, ...floats.some(renewed)])
      phases[node.index] = this.writePhase(node, true);
    const jobs = this.made.jobs.slice();
    for (const i of new Set([...renewed].map(({ jobIndex }) => jobIndex))) {
      jobs[i] = plannedJob(problem, problem.jobs[i]!, i, phases);
    }
    return this.write(phases, jobs);
  }

  private write(phases: readonly PlannedPhase[], jobs: readonly PlannedJob[]): Plan {
    const { problem, order, impossible, generator } = this;
    const { state, conflicts } = generator;
    this.written = state.outcomes;
    this.made = {
      now: problem.input.now,
      phases,
      inspections: problem.visits.map((visit): PlannedInspection => {
        const { conflicts: _, ...planned } = state.visitOf(visit);
        return { id: visit.inspection.id, jobId: visit.inspection.jobId, ...planned };
      }),
      jobs,
      conflicts: orderConflicts([
        ...order.conflicts,
        ...impossible.conflicts,
        ...conflicts,
        ...this.conflictsOfPlaces(),
        ...lateConflicts(state, jobs),
      ]),
    };
    return this.made;
  }

  private conflictsOfPlaces(): Conflict[] {
    const found: Conflict[] = [];
    for (const outcome of this.generator.state.outcomes) {
      if (outcome!.conflicts.length > 0) found.push(...outcome!.conflicts);
    }
    return found;
  }

  /** A phase as the plan gives it: the object that it was before where nothing about it is otherwise. */
  private writePhase(node: Node, changed: boolean): PlannedPhase {
    const { problem, generator, floats } = this;
    const { index } = node;
    const { outcomes } = generator.state;
    const outcome = outcomes[index]!;
    const was = changed ? undefined : this.written[index];
    if (was?.placed && outcome.placed && samePlacement(was, outcome)) {
      const phase = this.made.phases[index]!;
      outcomes[index] = was;
      if (phase.totalFloat === floats.totalOf(node) && phase.freeFloat === floats.freeOf(node)) return phase;
    }
    return plannedPhase(node, outcome, floats, problem.input.now);
  }
}

const NOTHING: ReadonlySet<Node> = new Set();

function plannedJob(
  problem: Problem,
  { id, due }: Job,
  index: number,
  phases: readonly PlannedPhase[],
): PlannedJob {
  let finish: PlannedJob['finish'] = null;
  let complete = true;
  for (const node of problem.phasesOf[index]!) {
    const phase = phases[node.index]!;
    if (phase.finish === null) complete = false;
    else if (finish === null || phase.finish > finish) ({ finish } = phase);
  }
  return { id, finish, complete, due: due ?? null };
}
