/** Activities, what comes before what, and how much of each resource they take: what a plain project is made of. */
export interface PlainProject {
  readonly durations: readonly number[];
  /** Successors of each activity, by index. */
  readonly successors: readonly (readonly number[])[];
  /** What each activity takes of each resource. */
  readonly demands: readonly (readonly number[])[];
  readonly capacities: readonly number[];
}

/** One direction of a network: successors in rows (`next[from[i]]` to `next[from[i + 1] - 1]`), how many come before each, and tails. */
export interface NetworkView {
  readonly from: Int32Array;
  readonly next: Int32Array;
  readonly before: Int32Array;
  /** Longest way from each activity's start to the end. */
  readonly tails: Int32Array;
}

/** A project seen from both ends. */
export interface Network {
  readonly activities: number;
  readonly durations: Int32Array;
  readonly views: readonly [NetworkView, NetworkView];
  /** Length of the longest way. */
  readonly critical: number;
  /** Sum of all durations: nothing takes longer than one after the other. */
  readonly longest: number;
}

/**
 * Compiles a project for passes from both ends.
 * @throws RangeError when activities wait for each other in a circle
 */
export function compileNetwork(project: PlainProject): Network {
  const durations = Int32Array.from(project.durations);
  const predecessors = mirrored(project.successors);
  const views = [
    viewOf(project.successors, predecessors, durations),
    viewOf(predecessors, project.successors, durations),
  ] as const;
  return {
    activities: durations.length,
    durations,
    views,
    critical: views[0].tails.reduce((most, tail) => Math.max(most, tail), 0),
    longest: durations.reduce((sum, duration) => sum + duration, 0),
  };
}

function mirrored(successors: readonly (readonly number[])[]): number[][] {
  const predecessors = successors.map((): number[] => []);
  successors.forEach((after, i) => {
    for (const j of after) predecessors[j]!.push(i);
  });
  return predecessors;
}

function viewOf(
  after: readonly (readonly number[])[],
  before: readonly (readonly number[])[],
  durations: Int32Array,
): NetworkView {
  const from = new Int32Array(after.length + 1);
  after.forEach((list, i) => (from[i + 1] = from[i]! + list.length));
  const tails = new Int32Array(after.length);
  const waiting = after.map((list) => list.length);
  const open = waiting.flatMap((count, i) => (count === 0 ? [i] : []));
  let done = 0;
  for (let i = open.pop(); i !== undefined; i = open.pop(), done++) {
    tails[i] = durations[i]! + after[i]!.reduce((most, j) => Math.max(most, tails[j]!), 0);
    for (const j of before[i]!) if (--waiting[j]! === 0) open.push(j);
  }
  if (done < after.length) throw new RangeError('Activities wait for each other in a circle.');
  return {
    from,
    next: Int32Array.from(after.flat()),
    before: Int32Array.from(before, (list) => list.length),
    tails,
  };
}
