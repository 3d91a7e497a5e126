import type { Interval, PlanInput } from '../../shared/schedule/model.js';

/** The open hours that a phase keeps: those of its crew, else of the first crew of its trade, else its own; null where it keeps none. */
export function openHours(input: PlanInput, phaseId: string): readonly Interval[] | null {
  const phase = input.phases.find(({ id }) => id === phaseId);
  if (!phase) return null;
  const { trade, crewId, previous } = phase;
  const crew =
    input.crews.find(({ id }) => id === (crewId ?? previous?.crewId)) ??
    input.crews.find(({ trades }) => trade !== undefined && trades.includes(trade));
  const calendarId = trade === undefined ? phase.calendarId : crew?.calendarId;
  return input.calendars.find(({ id }) => id === calendarId)?.open ?? null;
}
