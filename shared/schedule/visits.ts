import type { Conflict, PlannedInspection } from './model.js';
import type { Outcome } from './outcome.js';
import type { Visit } from './problem.js';
import { slot, type Slot } from './slot.js';

/** A visit as placed, with its conflicts. */
export interface VisitOutcome extends Omit<PlannedInspection, 'id' | 'jobId'> {
  readonly conflicts: readonly Conflict[];
}

/** Places a visit once the phases before it are placed. */
export function planVisit(visit: Visit, outcomes: readonly (Outcome | undefined)[], now: Slot): VisitOutcome {
  const { state } = visit.inspection;
  if (state.kind === 'passed') {
    const at = state.at;
    return outcome('passed', { ready: null, start: at, finish: at, reason: { kind: 'passed' } });
  }
  let ready: Slot | null = null;
  let last: string | null = null;
  for (const node of visit.after) {
    const before = outcomes[node.index];
    if (!before?.placed) return unplanned(node.id, null);
    if (ready === null || before.finish > ready) {
      ready = before.finish;
      last = node.id;
    }
  }
  if (state.kind === 'booked' && (ready === null || state.from >= ready)) {
    return outcome('booked', { ready, start: state.from, finish: state.to, reason: { kind: 'booked' } });
  }
  return firstVisit(visit, ready, last, now);
}

function firstVisit(visit: Visit, ready: Slot | null, last: string | null, now: Slot): VisitOutcome {
  const { state, notice, noticeIn, visit: length, calendarId } = visit.inspection;
  const conflicts = tooEarly(visit, ready);
  const asked = state.kind === 'requested' ? state.at : now;
  const noticed = noticeIn === 'working' ? visit.hours.add(asked, notice) : slot(asked + notice);
  if (noticed === null) return { ...unplanned(null, ready), conflicts };
  const wanted = slot(Math.max(noticed, now, ready ?? now));
  const start = length === 0 ? visit.hours.snapInstant(wanted) : visit.hours.gap(wanted, length);
  if (start === null) return { ...unplanned(null, ready), conflicts };
  const reason: VisitOutcome['reason'] =
    last !== null && ready === wanted
      ? { kind: 'phase', phaseId: last }
      : noticed === wanted && notice > 0
        ? { kind: 'notice', from: asked }
        : { kind: 'hours', calendarId, until: start };
  return {
    state: 'planned',
    ready,
    start,
    finish: slot(start + length),
    latestRequest: state.kind === 'requested' ? null : latestRequest(visit, start),
    reason,
    conflicts,
  };
}

/**
 * The visit made so much later that a phase waiting for it starts while it is still valid: it is asked for later.
 *
 * @param start of that phase
 * @param latest the visit must be over by then: the earliest start of all that wait for it
 * @returns undefined when it is valid still, or cannot be moved
 */
export function visitWithin(
  visit: Visit,
  planned: VisitOutcome,
  phaseId: string,
  start: Slot,
  latest: number,
): VisitOutcome | undefined {
  const { validFor, visit: length } = visit.inspection;
  if (validFor === undefined || planned.state !== 'planned') return undefined;
  if (start <= planned.finish! + validFor) return undefined;
  const wanted = slot(start - validFor - length);
  const at = length === 0 ? visit.hours.snapInstant(wanted) : visit.hours.gap(wanted, length);
  if (at === null || at + length > latest) return undefined;
  const { state } = visit.inspection;
  return {
    ...planned,
    start: at,
    finish: slot(at + length),
    latestRequest: state.kind === 'requested' ? null : latestRequest(visit, at),
    reason: { kind: 'validity', phaseId },
  };
}

/** Last moment at which asking still gives the notice before `start`, which is no sooner than asking now would give. */
function latestRequest(visit: Visit, start: Slot): Slot {
  const { notice, noticeIn } = visit.inspection;
  return noticeIn === 'working' ? visit.hours.subtract(start, notice)! : slot(start - notice);
}

function tooEarly(visit: Visit, ready: Slot | null): Conflict[] {
  const { state, id } = visit.inspection;
  if (state.kind !== 'booked') return [];
  return [{ code: 'visitBeforeReady', inspectionId: id, booked: state.from, ready }];
}

function outcome(
  state: 'passed' | 'booked',
  rest: Pick<VisitOutcome, 'ready' | 'start' | 'finish' | 'reason'>,
): VisitOutcome {
  return { state, ...rest, latestRequest: null, conflicts: [] };
}

function unplanned(phaseId: string | null, ready: Slot | null): VisitOutcome {
  return {
    state: 'unplanned',
    ready,
    start: null,
    finish: null,
    latestRequest: null,
    reason: { kind: 'unplanned', phaseId },
    conflicts: [],
  };
}
