import { compareIds } from './by-id.js';
import type { FloatPass } from './floats.js';
import { isUndated } from './lower-bounds.js';
import { mergeIntervals } from './intervals.js';
import type { Interval, PlannedPhase } from './model.js';
import type { Outcome, Placement } from './outcome.js';
import type { Node } from './problem.js';
import { slot, type Slot } from './slot.js';

/** A phase as the plan gives it. */
export function plannedPhase(node: Node, outcome: Outcome, floats: FloatPass, now: Slot): PlannedPhase {
  if (!outcome.placed) {
    return {
      id: node.id,
      jobId: node.job.id,
      state: 'unplanned',
      start: null,
      finish: null,
      crewId: null,
      segments: [],
      totalFloat: null,
      freeFloat: null,
      critical: false,
      fixedBy: null,
      reason: outcome.reason,
      ready: null,
      readyReason: outcome.reason,
      trail: [],
      weatherUnknown: false,
      assumes: [],
    };
  }
  const { start, finish } = outcome;
  const totalFloat = floats.totalOf(node);
  return {
    id: node.id,
    jobId: node.job.id,
    state: outcome.state,
    start,
    finish,
    crewId: outcome.crew?.id ?? null,
    segments: segmentsOf(node, outcome, now),
    totalFloat,
    freeFloat: floats.freeOf(node),
    critical: totalFloat !== null && totalFloat <= 0,
    fixedBy: fixedBy(node, outcome),
    reason: outcome.reason,
    ready: outcome.ready,
    readyReason: outcome.readyReason,
    trail: outcome.trail,
    weatherUnknown: outcome.state !== 'done' && (node.weather?.unknownIn(start, finish) ?? false),
    assumes: outcome.state === 'planned' ? undatedGates(node) : [],
  };
}

function fixedBy(node: Node, { state: phase, start }: Placement): PlannedPhase['fixedBy'] {
  if (phase !== 'planned') return null;
  if (node.pinned) return start === node.phase.facts!.pinnedStart ? 'pin' : null;
  return node.frozen && start === node.phase.commitment!.start ? 'commitment' : null;
}

/** Where it runs: pauses only where work may pause, and never in what has already happened. */
function segmentsOf(node: Node, placement: Placement, present: Slot): Interval[] {
  const { start, finish, hours } = placement;
  const { duration } = node.phase;
  if (finish <= start) return [];
  const pauses =
    duration.kind === 'work' && (duration.mode === 'interruptible' || placement.state === 'started');
  if (!pauses || placement.state === 'done') return [{ from: start, to: finish }];
  if (placement.state === 'planned') return hours.workable.between(start, finish);
  const now = slot(Math.max(start, Math.min(finish, present)));
  return mergeIntervals([{ from: start, to: now }, ...hours.workable.between(now, finish)]);
}

function undatedGates(node: Node): string[] {
  const { gates } = node.phase;
  if (!gates) return [];
  return [...new Set(gates.filter(isUndated).map((gate) => gate.id))].sort(compareIds);
}
