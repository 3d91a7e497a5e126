import type { Inspection } from '../../../shared/schedule/model.js';
import type { Inspection as InspectionRow } from '../../generated/prisma/client.js';
import { authorityCalendarId } from './gather-calendars.js';
import type { PlanningRows } from './rows.js';
import { slotsOf, type TimeFrame } from './time-frame.js';

/** Visiting hours of an authority nobody has entered. */
export const ANY_TIME = 'any time';

/** Minutes of a visit by an authority nobody has entered. */
const VISIT_MINUTES = 30;

/** An inspection with the phases that wait for it. */
export interface GatheredInspection {
  readonly inspection: Inspection;
  /** Phases that may not start before the visit. */
  readonly gates: readonly string[];
}

/**
 * The visits still to come. One that gates the start of a phase comes after everything that phase waits for; one that gates a finish comes
 * after the phase itself, and what follows the phase waits for it.
 */
export function gatherInspections(rows: PlanningRows, frame: TimeFrame): GatheredInspection[] {
  const authorities = new Map(rows.authorities.map((row) => [row.id, row]));
  const sites = new Map(rows.jobs.map((job) => [job.id, job.site]));
  const phases = new Map(rows.phases.map((phase) => [phase.id, phase]));
  const before = new Map<string, string[]>();
  const after = new Map<string, string[]>();
  for (const { fromId, toId, kind } of rows.links) {
    if (kind !== 'finishStart') continue;
    before.set(toId, [...(before.get(toId) ?? []), fromId]);
    after.set(fromId, [...(after.get(fromId) ?? []), toId]);
  }
  const points = new Map(rows.holdPoints.map((point) => [point.inspectionId, point]));
  return rows.inspections.flatMap((row) => {
    const phase = phases.get(row.phaseId);
    const gate = points.get(row.id)?.gate ?? 'start';
    if (!phase || phase.state === 'done' || (gate === 'start' && phase.state === 'started')) return [];
    const authorityId = row.authorityId ?? sites.get(row.jobId)?.authorityId ?? null;
    const authority = authorityId === null ? undefined : authorities.get(authorityId);
    const inspection: Inspection = {
      id: row.id,
      jobId: row.jobId,
      after: gate === 'start' ? (before.get(phase.id) ?? []) : [phase.id],
      notice: slotsOf((authority?.noticeHours ?? 0) * 60),
      noticeIn: 'elapsed',
      calendarId: authority ? authorityCalendarId(authority.id) : ANY_TIME,
      visit: slotsOf(authority?.visitMinutes ?? VISIT_MINUTES),
      state: stateOf(row, frame),
    };
    return [{ inspection, gates: gate === 'start' ? [phase.id] : (after.get(phase.id) ?? []) }];
  });
}

function stateOf(row: InspectionRow, frame: TimeFrame): Inspection['state'] {
  const { state, visitFrom, visitTo, requestedAt } = row;
  if (state === 'booked' && visitFrom && visitTo)
    return { kind: 'booked', from: frame.before(visitFrom), to: frame.at(visitTo) };
  if (state === 'requested' && requestedAt) return { kind: 'requested', at: frame.at(requestedAt) };
  return { kind: 'open' };
}
