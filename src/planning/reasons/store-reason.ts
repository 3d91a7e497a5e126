import { behindMostLag, explain, type ExplainStep } from '../../../shared/schedule/explain.js';
import type { Plan, PlannedInspection, PlannedPhase, Reason } from '../../../shared/schedule/model.js';
import type { Slot } from '../../../shared/schedule/slot.js';
import type { Link } from '../../generated/prisma/client.js';
import type { TimeFrame } from '../gather/time-frame.js';
import type { StoredReason, StoredStep } from './stored-reason.js';

/** What turning reasons into their stored form needs beside the plan. */
export interface ReasonFacts {
  readonly plan: Plan;
  readonly frame: TimeFrame;
  readonly links: ReadonlyMap<string, Link>;
  readonly visits: ReadonlyMap<string, PlannedInspection>;
  /** What else binds phases at the instant of their reason. */
  readonly ties: ReadonlyMap<string, readonly Reason[]>;
}

/** The own reasons of a phase, and where the chain goes on. */
export function storeReason(phase: PlannedPhase, facts: ReasonFacts): StoredReason {
  const inspections = facts.plan.inspections.filter(({ jobId }) => jobId === phase.jobId);
  const steps = explain({ ...facts.plan, phases: [phase], inspections }, phase.id);
  const ties = facts.ties.get(phase.id)?.map((reason) => storeOne(reason, facts, phase));
  return {
    steps: steps.map((step) => storeStep(step, phase, facts)),
    ...(ties ? { ties } : {}),
    next: nextPhase(steps.at(-1)),
  };
}

/** The phase that the last of a phase's own reasons points to. */
function nextPhase(step: ExplainStep | undefined): string | null {
  const reason = step?.reason;
  switch (reason?.kind) {
    case 'link':
    case 'crew':
    case 'phase':
    case 'unplanned':
      return reason.phaseId;
    case 'mostLag':
      return behindMostLag(reason);
    case 'equipment':
      return reason.releasedBy ?? reason.phaseId;
    default:
      return null;
  }
}

function storeStep(step: ExplainStep, phase: PlannedPhase, facts: ReasonFacts): StoredStep {
  if (step.inspectionId === null) return storeOne(step.reason as Reason, facts, phase);
  const reason = step.reason as PlannedInspection['reason'];
  const { frame } = facts;
  const base = { kind: `visit-${reason.kind}`, inspectionId: step.inspectionId, at: iso(step.at, frame) };
  const phaseId = 'phaseId' in reason ? reason.phaseId : null;
  return { ...base, phaseId };
}

/** One reason of the engine in its stored form. `phase` is the one it belongs to, where there is one. */
export function storeOne(
  reason: Reason,
  { frame, links, visits }: ReasonFacts,
  phase?: PlannedPhase,
): StoredStep {
  const { kind } = reason;
  switch (reason.kind) {
    case 'now':
      return { kind };
    case 'actual':
      return { kind, at: iso(phase?.start ?? null, frame) };
    case 'link': {
      const link = links.get(reason.linkId);
      const { kind: ends = 'finishStart', lagMinutes = 0, lagIn = 'elapsed' } = link ?? {};
      const ready = iso(phase?.ready ?? null, frame);
      return { kind, at: ready, phaseId: reason.phaseId, link: { kind: ends, lagMinutes, lagIn } };
    }
    case 'mostLag':
      return { kind, at: iso(reason.until, frame), phaseId: reason.phaseId };
    case 'crew':
      return {
        kind,
        at: iso(reason.until, frame),
        crewId: reason.crewId,
        phaseId: reason.phaseId,
        ahead: reason.ahead,
      };
    case 'equipment':
      return {
        kind,
        at: iso(reason.until, frame),
        poolId: reason.poolId,
        phaseId: reason.phaseId,
        releasedBy: reason.releasedBy,
        ahead: reason.ahead,
      };
    case 'weather':
      return { kind, at: iso(reason.until, frame), weather: weatherOf(reason.cause, frame) };
    case 'clearance':
      return { kind, at: iso(reason.at, frame), clearanceId: reason.id };
    case 'inspection':
      return {
        kind,
        at: iso(reason.until, frame),
        inspectionId: reason.inspectionId,
        visit: visitOf(visits.get(reason.inspectionId), frame),
      };
    case 'cure':
      return {
        kind,
        at: iso(reason.at, frame),
        strength: { now: reason.strengthNow, needed: reason.strengthNeeded },
      };
    case 'notBefore':
      return { kind, at: iso(reason.at, frame), code: reason.cause };
    case 'pin':
    case 'commitment':
      return { kind, at: iso(reason.at, frame) };
    case 'calendar':
      return { kind, at: iso(reason.until, frame) };
    case 'unplanned':
      return { kind, phaseId: reason.phaseId, code: reason.code };
  }
}

/** A slot as an ISO instant. */
export function iso(slot: Slot | null, frame: TimeFrame): string | null {
  return slot === null ? null : isoAt(slot, frame);
}

const isoAt = (slot: Slot, frame: TimeFrame): string => new Date(frame.ms(slot)).toISOString();

function weatherOf(cause: Extract<Reason, { kind: 'weather' }>['cause'], frame: TimeFrame) {
  if (cause.kind === 'unknown') return { cause: 'unknown', text: '' };
  if (cause.kind === 'called') return { cause: 'called', text: cause.text };
  return { cause: 'limit', text: cause.text, hour: isoAt(cause.hour, frame) };
}

function visitOf(
  visit: PlannedInspection | undefined,
  frame: TimeFrame,
): { from: string; to: string } | null {
  if (!visit || visit.start === null || visit.finish === null) return null;
  return { from: isoAt(visit.start, frame), to: isoAt(visit.finish, frame) };
}
