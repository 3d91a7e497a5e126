import type { Edge, Node } from './problem.js';

/** Whether a phase has begun: then what had to come before its start no longer matters. */
export function hasStarted(node: Node): boolean {
  return node.phase.facts?.actualStart !== undefined;
}

/** Whether a phase is finished: then nothing can move it. */
export function hasFinished(node: Node): boolean {
  return node.phase.facts?.actualFinish !== undefined;
}

/** Whether a link still has a say in where its successor sits. */
export function stillBinds(edge: Edge): boolean {
  if (hasFinished(edge.to)) return false;
  return !hasStarted(edge.to) || edge.link.kind === 'FF' || edge.link.kind === 'SF';
}

/** Phases that must be placed before this one, once for every link or inspection that says so. */
export function prerequisites(node: Node): Node[] {
  const before = node.ins.filter(stillBinds).map((edge) => edge.from);
  if (!hasStarted(node)) {
    for (const visit of node.visits) {
      if (visit.inspection.state.kind !== 'passed') before.push(...visit.after);
    }
  }
  return before;
}

/** Phases that this one must be placed before; mirrors `prerequisites`. */
export function dependents(node: Node): Node[] {
  const after = node.outs.filter(stillBinds).map((edge) => edge.to);
  for (const gated of node.gated) if (!hasStarted(gated)) after.push(gated);
  return after;
}
