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
import { finishFrom } from './pinned.js';
import { lateConflicts, orderConflicts } from './plan-conflicts.js';
import { plannedPhase } from './planned-phase.js';
import { isFixed, Problem, type Node } from './problem.js';
import { patchFor } from './problem-patch.js';
import { Ranking } from './rank.js';
import { Replay } from './replay.js';
import type { Reservation } from './state.js';
import { tiesOf } from './ties.js';

/**
 * A pass of planning that is kept: everything compiled, and every place, so that the pass over a slightly changed input need only settle
 * what the change reaches. The answer is the same either way.
 */
export class Pass {
  private readonly problem: Problem;
  private readonly order: Order;
  private ranking!: Ranking;
  private impossible!: ImpossibleLags;
  private generator!: Generator;
  private floats!: FloatPass;
  private made!: Plan;

  /**
   * @throws PlanInputError when the input names things that are not in it
   */
  constructor(input: PlanInput) {
    checkInput(input);
    this.problem = new Problem(input);
    this.order = orderNetwork(this.problem);
    this.whole();
  }

  /** The plan of the input it stands at. */
  get plan(): Plan {
    return this.made;
  }

  /** Everything placed anew over what is compiled; with `order`, in that order instead of the input's own. */
  whole(order = this.problem.input.order): Plan {
    const { problem } = this;
    const { sequence, onCycle } = this.order;
    if (order !== problem.input.order) problem.input = { ...problem.input, order };
    this.impossible = impossibleLags(problem, onCycle);
    this.ranking = new Ranking(problem, sequence);
    this.generator = generate(problem, this.order, this.ranking, this.impossible.edges);
    this.floats = new FloatPass(this.generator.state, sequence);
    this.floats.all();
    this.made = this.write();
    return this.made;
  }

  /** Phases in the order in which they were given their places: a phase goes around those before it and not around those after. */
  get settled(): readonly string[] {
    return this.generator.state.settled.map(({ id }) => id);
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
    const renewed = this.canResume(changed, pins) ? this.resume(changed, pins) : undefined;
    this.made = renewed ? this.renew(renewed) : this.whole();
    return this.made;
  }

  /**
   * Whether places of the pass before can be kept: not where a visit may move for the sake of what waits for it, nor where what follows soon
   * puts off what comes before, nor where a new pin meets other fixed starts.
   */
  private canResume(changed: ReadonlySet<Node>, pins: readonly Node[]): boolean {
    const { nodes, visits } = this.problem;
    if (!this.generator.regular || visits.some(({ inspection }) => inspection.validFor !== undefined))
      return false;
    if (nodes.some(({ mosts }) => mosts.length > 0) || [...changed].some(({ started }) => started))
      return false;
    if (pins.length === 0) return true;
    const [pin] = pins;
    return (
      pins.length === 1 && pin!.holds.length === 0 && nodes.every((node) => node === pin || !isFixed(node))
    );
  }

  /**
   * Settles what a change reaches.
   * @param pins those among the changed phases that are, or were, fixed by a person
   * @returns phases placed anew; undefined when a whole pass is needed
   */
  private resume(changed: ReadonlySet<Node>, pins: readonly Node[]): ReadonlySet<Node> | undefined {
    const { generator, problem } = this;
    const { state, reads } = generator;
    const moved = this.ranking.update(changed);
    const old = state.outcomes.slice();
    const from = this.firstReached(changed, moved, pins);
    const blocks = generator.takeBackTo(from);
    if (!blocks) return undefined;
    const replay = new Replay(problem, old, blocks, moved, changed, reads);
    for (const node of pins) {
      replay.disturbReservation(node, state.reservationOf(node));
      state.unreserve(node);
    }
    for (const node of pins) {
      if (!node.pinned) continue;
      generator.reserve(node);
      replay.disturbReservation(node, state.reservationOf(node));
    }
    generator.resume(replay);
    return replay.outOfStep || state.mark() < problem.nodes.length ? undefined : replay.renewed;
  }

  /** Place in the order of settling up to which nothing can come out otherwise. */
  private firstReached(changed: ReadonlySet<Node>, moved: ReadonlySet<Node>, pins: readonly Node[]): number {
    const { settled } = this.generator.state;
    const place = new Int32Array(settled.length);
    for (let i = 0; i < settled.length; i++) place[settled[i]!.index] = i;
    let first = settled.length;
    for (const { index } of changed) first = Math.min(first, place[index]!);
    for (const { index, prerequisites } of moved) {
      const ready = prerequisites.reduce((latest, before) => Math.max(latest, place[before.index]! + 1), 0);
      first = Math.min(first, place[index]!, ready);
    }
    for (const node of pins) {
      for (const { crew, from, to } of this.aside(node)) {
        const reader = settled.findIndex(
          (one) =>
            this.generator.reads.touch(one, from, to) &&
            one.choices.some((choice) => choice.crewIndex === crew),
        );
        if (reader >= 0) first = Math.min(first, reader);
      }
    }
    return first;
  }

  /** What may be, or have been, set aside for a pinned phase. */
  private aside(node: Node): Reservation[] {
    const was = this.generator.state.outcomes[node.index];
    const at = node.phase.facts?.pinnedStart;
    return node.choices.flatMap(({ crewIndex: crew, hours }) => {
      const stretches: Reservation[] = [];
      if (was?.placed) stretches.push({ crew, from: was.start, to: was.finish, started: false });
      if (at !== undefined) {
        const to = finishFrom(node, hours, at) ?? this.problem.end;
        stretches.push({ crew, from: at, to, started: false });
      }
      return stretches;
    });
  }

  /** The plan with some phases written anew; the others are the very same objects. */
  private renew(renewed: ReadonlySet<Node>): Plan {
    const { problem, floats, generator } = this;
    const rewritten = new Set(renewed);
    if (problem.visits.length === 0) for (const node of floats.some(renewed)) rewritten.add(node);
    else {
      const before = floats.floats.slice();
      floats.all();
      for (const node of problem.nodes) {
        const [was, is] = [before[node.index], floats.floats[node.index]];
        if (was?.total !== is?.total || was?.free !== is?.free) rewritten.add(node);
      }
    }
    const phases = this.made.phases.slice();
    for (const node of rewritten) {
      const outcome = generator.state.outcomes[node.index]!;
      phases[node.index] = plannedPhase(node, outcome, floats.floats[node.index]!, problem.input.now);
    }
    const jobs = this.made.jobs.slice();
    for (const i of new Set([...renewed].map(({ jobIndex }) => jobIndex))) {
      jobs[i] = plannedJob(problem, problem.jobs[i]!, i, phases);
    }
    return this.write(phases, jobs);
  }

  private write(phases = this.writePhases(), jobs = this.writeJobs(phases)): Plan {
    const { problem, order, impossible, generator } = this;
    const { state, conflicts } = generator;
    return {
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
  }

  private writeJobs(phases: readonly PlannedPhase[]): PlannedJob[] {
    const { problem } = this;
    return problem.jobs.map((job, i) => plannedJob(problem, job, i, phases));
  }

  private conflictsOfPlaces(): Conflict[] {
    const found: Conflict[] = [];
    for (const outcome of this.generator.state.outcomes) {
      if (outcome!.conflicts.length > 0) found.push(...outcome!.conflicts);
    }
    return found;
  }

  private writePhases(): PlannedPhase[] {
    const { problem, generator, floats } = this;
    const { outcomes } = generator.state;
    const { now } = problem.input;
    return problem.nodes.map((node) =>
      plannedPhase(node, outcomes[node.index]!, floats.floats[node.index]!, now),
    );
  }
}

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
