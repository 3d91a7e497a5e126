import type { Conflict } from './model.js';
import type { Node, Problem } from './problem.js';

/** Phases in an order that respects every link, and what could not be ordered. */
export interface Order {
  /** Prerequisites first; phases that hang on a cycle follow at the end. */
  readonly sequence: readonly Node[];
  /** Phases on a reported cycle. */
  readonly onCycle: ReadonlySet<Node>;
  readonly conflicts: readonly Conflict[];
}

/** Orders the network. Each cycle is named and taken out until the rest can be ordered. */
export function orderNetwork(problem: Problem): Order {
  const waiting = problem.nodes.map((node) => node.prerequisites.length);
  const sequence: Node[] = [];
  const onCycle = new Set<Node>();
  const conflicts: Conflict[] = [];
  const settled = new Set<Node>();
  let next = problem.nodes.filter((node) => waiting[node.index] === 0);
  for (;;) {
    while (next.length > 0) {
      const node = next.pop()!;
      if (settled.has(node)) continue;
      settled.add(node);
      if (!onCycle.has(node)) sequence.push(node);
      for (const after of node.dependents) if (--waiting[after.index]! === 0) next.push(after);
    }
    const stuck = problem.nodes.find((node) => !settled.has(node));
    if (!stuck) break;
    const cycle = walkBack(stuck, settled);
    for (const node of cycle) onCycle.add(node);
    conflicts.push(describe(cycle));
    next = [...cycle];
  }
  return { sequence: [...sequence, ...onCycle], onCycle, conflicts };
}

/** Follows open prerequisites until one comes up again: the loop, in order of work, smallest id first. */
function walkBack(start: Node, settled: ReadonlySet<Node>): Node[] {
  const path: Node[] = [];
  const seen = new Map<Node, number>();
  let at = start;
  while (!seen.has(at)) {
    seen.set(at, path.length);
    path.push(at);
    at = at.prerequisites.filter((node) => !settled.has(node)).sort((a, b) => a.index - b.index)[0]!;
  }
  const loop = path.slice(seen.get(at)).reverse();
  const first = loop.reduce((best, node, i) => (node.index < loop[best]!.index ? i : best), 0);
  return [...loop.slice(first), ...loop.slice(0, first)];
}

function describe(cycle: readonly Node[]): Conflict {
  const linkIds = cycle.flatMap((node, i) => {
    const next = cycle[(i + 1) % cycle.length]!;
    return node.outs.filter((edge) => edge.to === next).map((edge) => edge.link.id);
  });
  return { code: 'cycle', phaseIds: cycle.map((node) => node.id), linkIds };
}
