import { applyChanges, type Change } from './change.js';
import type { Plan, PlanInput } from './model.js';
import { Pass } from './pass.js';

/** A plan that is kept warm: it previews changes without being changed itself, or goes on from them. */
export class Planner {
  private constructor(
    private current: PlanInput,
    private made: Plan,
    private pass: Pass,
  ) {}

  /**
   * Compiles an input and plans it.
   * @throws PlanInputError when the input names things that are not in it
   */
  static of(input: PlanInput): Planner {
    const pass = new Pass(input);
    return new Planner(input, pass.plan, pass);
  }

  /** What is planned. */
  get input(): PlanInput {
    return this.current;
  }

  /** The plan of the input as it stands. */
  get plan(): Plan {
    return this.made;
  }

  /**
   * The plan after some changes: byte for byte what `plan(applyChanges(input, changes))` gives. The planner itself stays as it is.
   * @throws RangeError or PlanInputError as those do
   */
  preview(changes: readonly Change[]): Plan {
    return this.planOf(applyChanges(this.current, changes));
  }

  /** The plan after some changes, from which the planner then goes on. */
  apply(changes: readonly Change[]): Plan {
    const next = applyChanges(this.current, changes);
    this.made = this.planOf(next);
    this.current = next;
    return this.made;
  }

  private planOf(input: PlanInput): Plan {
    const kept = this.pass.to(input);
    if (kept) return kept;
    this.pass = new Pass(input);
    return this.pass.plan;
  }
}
