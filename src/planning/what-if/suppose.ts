import type { Change } from '../../../shared/schedule/change.js';
import type { PlanInput } from '../../../shared/schedule/model.js';
import { delay, extraCrew, lostDay } from '../../../shared/schedule/what-if/scenarios.js';
import { InvalidInput } from '../../platform/outcomes/invalid-input.js';
import { NotFound } from '../../platform/outcomes/not-found.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { crewCalendarId } from '../gather/gather-calendars.js';
import type { PlanningRows } from '../gather/rows.js';
import { slotsOf, type TimeFrame } from '../gather/time-frame.js';
import type { WhatIfInput } from './what-if.inputs.js';

/** Longer than any entry takes. */
const MOST_MINUTES = 60 * 24 * 60;

/**
 * Refuses what cannot be supposed.
 * @throws Refused with InvalidInput or NotFound
 */
export function demandSupposable(input: WhatIfInput, rows: PlanningRows, frame: TimeFrame): void {
  const faults: { path: string; message: string }[] = [];
  const fault = (path: string, message: string): void => void faults.push({ path, message });
  const { delay, lostTime, start } = input;
  if (!Object.values(input).some(Boolean)) {
    fault('', 'Suppose something: a delay, an extra crew, lost time, no protection or another start.');
  }
  if (delay && !(delay.minutes >= 15 && delay.minutes <= MOST_MINUTES)) {
    fault('delay.minutes', `takes from 15 to ${MOST_MINUTES} minutes.`);
  }
  if (lostTime && !(lostTime.from < lostTime.to))
    fault('lostTime.to', 'must be after the first moment lost.');
  const within = (at: Date): boolean => at.getTime() >= frame.nowMs && at.getTime() < frame.endMs;
  if (lostTime && !(lostTime.to.getTime() > frame.nowMs && lostTime.from.getTime() < frame.endMs)) {
    fault('lostTime', 'must reach into the time that is planned: from now on, within the horizon.');
  }
  if (start && !within(start.startAt))
    fault('start.startAt', 'must be from now on, within the time that is planned.');
  if (faults.length > 0) throw new Refused(new InvalidInput(faults));
  const phaseIds = [delay?.phaseId, input.withoutProtection?.phaseId, start?.phaseId];
  for (const id of phaseIds) {
    if (id !== undefined && !rows.phases.some((phase) => phase.id === id))
      throw new Refused(new NotFound('phase'));
  }
  for (const id of [input.extraCrew?.crewId, lostTime?.crewId]) {
    if (id && !rows.crews.some((crew) => crew.id === id)) throw new Refused(new NotFound('crew'));
  }
}

/** Rows as they would be: a phase that goes unprotected takes no equipment, so its weather is that of bare work. */
export function supposedRows(input: WhatIfInput, rows: PlanningRows): PlanningRows {
  const bare = input.withoutProtection?.phaseId;
  return bare === undefined
    ? rows
    : { ...rows, holds: rows.holds.filter(({ fromPhaseId }) => fromPhaseId !== bare) };
}

/** Everything else as changes of what is planned. */
export function supposedChanges(input: WhatIfInput, planned: PlanInput, frame: TimeFrame): Change[] {
  const { lostTime, start } = input;
  const changes: Change[] = [];
  if (input.delay) changes.push(...delay(input.delay.phaseId, slotsOf(input.delay.minutes)));
  if (input.extraCrew) changes.push(...extraCrew(planned, input.extraCrew.crewId));
  if (lostTime) {
    const from = frame.before(lostTime.from);
    const to = frame.at(lostTime.to);
    const crews = lostTime.crewId ? [lostTime.crewId] : planned.crews.map(({ id }) => id);
    changes.push(...crews.flatMap((id) => lostDay(from, to, crewCalendarId(id))));
  }
  if (start) {
    const phase = planned.phases.find(({ id }) => id === start.phaseId);
    const pinnedStart = frame.at(start.startAt);
    if (phase) changes.push({ kind: 'phase', phase: { ...phase, facts: { ...phase.facts, pinnedStart } } });
  }
  return changes;
}
