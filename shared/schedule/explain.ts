import { sortedById } from './by-id.js';
import type { Plan, PlannedInspection, PlannedPhase, Reason } from './model.js';
import type { Slot } from './slot.js';

/** One link of the chain: a phase (or visit), where it sits, and what binds it. */
export interface ExplainStep {
  readonly phaseId: string | null;
  readonly inspectionId: string | null;
  readonly at: Slot | null;
  readonly reason: Reason | PlannedInspection['reason'];
}

/**
 * Why a phase sits where it sits, from its own reason back to today or to a date given from outside (a clearance, a cure, a pin,
 * a commitment, something that has happened).
 *
 * @returns the chain, nearest reason first; empty for an unknown phase
 */
export function explain(plan: Plan, phaseId: string): ExplainStep[] {
  const phases = new Map(plan.phases.map((phase) => [phase.id, phase]));
  const visits = new Map(sortedById(plan.inspections).map((visit) => [visit.id, visit]));
  const steps: ExplainStep[] = [];
  const seen = new Set<string>();
  let next: string | null = phaseId;
  while (next !== null) {
    const phase = phases.get(next);
    if (!phase) break;
    if (seen.has(next)) {
      next = outOfCircle(phases, seen, steps);
      if (next === null) break;
      continue;
    }
    seen.add(next);
    next = explainPhase(phase, visits, steps);
  }
  return steps;
}

/** Phases that hold each other in place: what lies behind the circle, and the phase to go on with. */
function outOfCircle(
  phases: ReadonlyMap<string, PlannedPhase>,
  seen: ReadonlySet<string>,
  steps: ExplainStep[],
): string | null {
  // Put off for the sake of what follows, and otherwise held by what made it ready.
  const putOff = [...steps].reverse().flatMap(({ phaseId, reason }) => {
    const id = reason.kind === 'mostLag' ? phaseId : reason.kind === 'validity' ? reason.phaseId : null;
    const phase = id === null ? undefined : phases.get(id);
    return phase ? [phase] : [];
  });
  for (const phase of putOff) {
    if (steps.some((step) => step.phaseId === phase.id && step.reason === phase.readyReason)) continue;
    steps.push(stepOf(phase, phase.readyReason));
    return phase.readyReason.kind === 'link' ? phase.readyReason.phaseId : null;
  }
  // What a person has fixed decides.
  const named = steps.flatMap(({ reason }) => (reason.kind === 'equipment' ? [reason.phaseId] : []));
  const fixed = [...seen, ...named].map((id) => phases.get(id)).find((one) => one?.fixedBy);
  if (fixed) steps.push(stepOf(fixed, { kind: fixed.fixedBy!, at: fixed.start! }));
  else if (putOff.length > 0) steps.push(stepOf(putOff[0]!, { kind: 'now' }));
  return null;
}

function stepOf(phase: PlannedPhase, reason: Reason): ExplainStep {
  return { phaseId: phase.id, inspectionId: null, at: phase.start, reason };
}

/** The phase that kept the successor from coming sooner, where it was one; a link is never the cause, but what lies behind it. */
export function behindMostLag({ cause }: Extract<Reason, { kind: 'mostLag' }>): string | null {
  switch (cause.kind) {
    case 'crew':
      return cause.phaseId;
    case 'equipment':
      return cause.releasedBy ?? cause.phaseId;
    case 'mostLag':
      return behindMostLag(cause);
    default:
      return null;
  }
}

/** Adds the reasons of one phase, latest wait first; returns the phase to go on with. */
function explainPhase(
  phase: PlannedPhase,
  visits: ReadonlyMap<string, PlannedInspection>,
  steps: ExplainStep[],
): string | null {
  for (const reason of reasonsOf(phase)) {
    steps.push(stepOf(phase, reason));
    switch (reason.kind) {
      case 'link':
      case 'crew':
        return reason.phaseId;
      case 'mostLag': {
        const behind = behindMostLag(reason);
        if (behind === null) continue;
        return behind;
      }
      case 'equipment':
        return reason.releasedBy ?? reason.phaseId;
      case 'unplanned':
        return reason.phaseId;
      case 'inspection': {
        const visit = visits.get(reason.inspectionId)!;
        steps.push({ phaseId: null, inspectionId: visit.id, at: visit.start, reason: visit.reason });
        const binds = visit.reason;
        if ('phaseId' in binds) return binds.phaseId;
        return null;
      }
      case 'weather':
      case 'calendar':
        continue;
      default:
        return null;
    }
  }
  return null;
}

/** The binding reason, then what led up to it: earlier waits and what made the phase ready. */
function reasonsOf({ reason, readyReason, trail }: PlannedPhase): Reason[] {
  const binding = trail.findLastIndex((step) => step.reason.kind !== 'calendar');
  if (binding < 0) return reason.kind === 'calendar' ? [reason, readyReason] : [reason];
  const earlier = trail.slice(0, binding).map((step) => step.reason);
  return [reason, ...earlier.reverse().filter(({ kind }) => kind !== 'calendar'), readyReason];
}
