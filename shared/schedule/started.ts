import { fromFinish, lagAfter, toFinish } from './link-lag.js';
import type { Crew } from './model.js';
import type { Outcome, Placement } from './outcome.js';
import type { Node, Problem } from './problem.js';
import { slot, type Slot } from './slot.js';

/** The crew that facts name, or the one promised, or the first that could. */
function factCrew(problem: Problem, node: Node): Crew | null {
  const id = node.phase.facts?.crewId ?? node.phase.crewId ?? node.phase.commitment?.crewId;
  if (id !== undefined) return problem.crews.find((crew) => crew.id === id) ?? null;
  return node.finished ? null : (node.crews[0] ?? null);
}

/** A finished phase sits where it happened, whatever should have been. */
export function placeFinished(problem: Problem, node: Node): Placement {
  const { actualStart, actualFinish } = node.phase.facts!;
  return fact(problem, node, 'done', actualStart!, actualFinish!);
}

/**
 * A started phase runs on from now through open hours until its remaining work is done, pausing where it must; a cure runs by the clock.
 * Links to its finish can still hold it open.
 */
export function placeStarted(
  problem: Problem,
  node: Node,
  outcomes: readonly (Outcome | undefined)[],
): Placement {
  const started = fact(problem, node, 'started', node.phase.facts!.actualStart!, problem.input.now);
  const worked = remainingFinish(problem, node, started);
  const released = heldOpen(problem, node, started, outcomes);
  if (worked !== null && released !== null) {
    const finish = slot(Math.max(worked, released, started.start));
    if (finish <= problem.end) return { ...started, finish };
  }
  const finish = slot(Math.max(problem.end, problem.input.now));
  const conflict = { code: 'beyondHorizon', phaseId: node.id, cause: started.reason } as const;
  return { ...started, finish, conflicts: [conflict] };
}

function fact(problem: Problem, node: Node, state: 'done' | 'started', start: Slot, finish: Slot): Placement {
  const crew = factCrew(problem, node);
  return {
    placed: true,
    state,
    start,
    finish,
    crew,
    crewIndex: problem.crewIndex(crew),
    hours: problem.hoursOf(node, crew),
    ready: start,
    readyReason: { kind: 'actual' },
    trail: [],
    reason: { kind: 'actual' },
    conflicts: [],
  };
}

function remainingFinish(problem: Problem, node: Node, { start, hours }: Placement): Slot | null {
  const { duration, facts } = node.phase;
  const from = slot(Math.max(problem.input.now, start));
  if (duration.kind === 'elapsed') {
    return facts?.remaining === undefined
      ? slot(Math.max(start + node.length, from))
      : slot(from + facts.remaining);
  }
  const done = hours.workable.worked(from) - hours.workable.worked(start);
  const left = facts?.remaining ?? Math.max(Math.min(1, node.length), node.length - done);
  return hours.workable.add(from, left);
}

/** The earliest finish that links allow; null when a lag outruns the calendar. */
function heldOpen(
  problem: Problem,
  node: Node,
  { hours }: Placement,
  outcomes: readonly (Outcome | undefined)[],
): Slot | null {
  let latest = problem.input.now;
  for (const { link, from } of node.ins) {
    const before = outcomes[from.index];
    if (!before?.placed || !toFinish(link.kind)) continue;
    const at = lagAfter(link, fromFinish(link.kind) ? before.finish : before.start, hours.own);
    if (at === null) return null;
    if (at > latest) latest = at;
  }
  return latest;
}
