import { compareIds } from './by-id.js';
import { dependents, hasFinished, hasStarted } from './dependencies.js';
import type { Ahead, PlanInput } from './model.js';
import type { Node, Problem } from './problem.js';

/** How early a phase is dealt with: facts, then what is fixed, then the rest. */
type Class = 0 | 1 | 2;

interface Key {
  readonly group: Class;
  /** Place in the given order. */
  readonly listed: number;
  /** Where it stood before. */
  readonly order: number;
  readonly priority: number;
  readonly due: number;
  readonly tail: number;
}

/** Whether a person has fixed the start. */
export function isPinned(node: Node): boolean {
  return node.phase.facts?.pinnedStart !== undefined && !hasStarted(node);
}

/** Whether the start is promised inside the freeze window. */
export function isFrozen(node: Node, input: PlanInput): boolean {
  const { commitment } = node.phase;
  return commitment !== undefined && commitment.start < input.freezeUntil && !hasStarted(node);
}

/**
 * Gives every phase a rank, 0 first: started and finished, then frozen and pinned, then by where it stood before, job priority, due date,
 * longest tail, id. A phase is never ranked after one that waits for it: it takes over that one's urgency.
 */
export function rankPhases(problem: Problem, sequence: readonly Node[]): number[] {
  const tails = tailLengths(problem, sequence);
  const listed = placesOf(problem.input.order ?? []);
  const keys: Key[] = problem.nodes.map((node) => {
    const group =
      hasStarted(node) || hasFinished(node) ? 0 : isPinned(node) || isFrozen(node, problem.input) ? 1 : 2;
    return {
      group,
      listed: group === 2 ? (listed.get(node.id) ?? Infinity) : 0,
      order: node.phase.commitment?.start ?? node.phase.previous?.start ?? Infinity,
      priority: node.job.priority,
      due: node.job.due ?? Infinity,
      tail: -tails[node.index]!,
    };
  });
  for (let i = sequence.length - 1; i >= 0; i--) {
    const node = sequence[i]!;
    for (const after of dependents(node)) {
      if (compareKeys(keys[after.index]!, keys[node.index]!) < 0) keys[node.index] = keys[after.index]!;
    }
  }
  const sorted = [...problem.nodes].sort(
    (a, b) => compareKeys(keys[a.index]!, keys[b.index]!) || compareIds(a.id, b.id),
  );
  const ranks = new Array<number>(sorted.length);
  sorted.forEach((node, i) => (ranks[node.index] = i));
  return ranks;
}

/** Looked up once an order, however many reasons ask. */
const orders = new WeakMap<readonly string[], ReadonlyMap<string, number>>();

function placesOf(order: readonly string[]): ReadonlyMap<string, number> {
  let places = orders.get(order);
  if (!places) orders.set(order, (places = new Map(order.map((id, place) => [id, place]))));
  return places;
}

/** By which rule `first` goes before `second`. */
export function aheadOf(first: Node, second: Node, input: PlanInput): Ahead {
  if (hasStarted(first) || hasFinished(first)) return 'fact';
  if (isPinned(first)) return 'pin';
  if (isFrozen(first, input)) return 'commitment';
  if (second.ins.some((edge) => edge.from === first)) return 'link';
  const places = input.order && placesOf(input.order);
  if (places && !isPinned(second) && !isFrozen(second, input)) {
    const [a, b] = [places.get(first.id) ?? Infinity, places.get(second.id) ?? Infinity];
    if (a !== b) return a < b ? 'order' : 'needed';
  }
  const before = ({ phase }: Node): number => phase.commitment?.start ?? phase.previous?.start ?? Infinity;
  if (before(first) < before(second)) return 'previous';
  if (before(first) > before(second)) return 'needed';
  if (first.job.priority !== second.job.priority)
    return first.job.priority < second.job.priority ? 'priority' : 'needed';
  const [due, other] = [first.job.due ?? Infinity, second.job.due ?? Infinity];
  if (due !== other) return due < other ? 'due' : 'needed';
  return 'tail';
}

function compareKeys(a: Key, b: Key): number {
  return (
    a.group - b.group ||
    difference(a.listed, b.listed) ||
    difference(a.order, b.order) ||
    a.priority - b.priority ||
    difference(a.due, b.due) ||
    a.tail - b.tail
  );
}

/** Infinity less Infinity is no number: equal keys are equal. */
function difference(a: number, b: number): number {
  return a === b ? 0 : a - b;
}

/** Longest way to the end from each phase's start, in slots of the clock: work counts as much longer as its hours are fewer. */
function tailLengths(problem: Problem, sequence: readonly Node[]): number[] {
  const tails = new Array<number>(problem.nodes.length).fill(0);
  for (let i = sequence.length - 1; i >= 0; i--) {
    const node = sequence[i]!;
    const longest = dependents(node).reduce((most, after) => Math.max(most, tails[after.index]!), 0);
    tails[node.index] = longest + clockLength(problem, node);
  }
  return tails;
}

function clockLength(problem: Problem, node: Node): number {
  if (node.phase.duration.kind === 'elapsed') return node.length;
  const { own } = problem.hoursOf(node, node.crews[0] ?? null);
  const open = own.worked(problem.end) - own.worked(problem.begin);
  return open === 0 ? node.length : Math.round((node.length * problem.input.horizon) / open);
}
