import type { Gate, PlanInput } from '../../shared/schedule/model.js';
import { slot } from '../../shared/schedule/slot.js';
import { seeded } from './seeded.js';

/**
 * The same portfolio with jobs that come in one after the other over as long as the crews of a trade need for all their work when they are busy
 * for a given share of their open hours, at most the horizon: one job in each equal part of that time, on a drawn day of it. A job's first
 * phase waits for the day on which the job comes in.
 *
 * @param busy share of the open hours, above 0 and at most 1
 */
export function comingInTurn(input: PlanInput, trade: string, busy: number): PlanInput {
  const until = whenDone(input, trade, busy);
  const draw = seeded(20_240_112);
  const step = Math.ceil(until / input.jobs.length);
  const seen = new Set<string>();
  const phases = input.phases.map((phase) => {
    if (seen.has(phase.jobId)) return phase;
    seen.add(phase.jobId);
    const at = slot(Math.floor((until * (seen.size - 1)) / input.jobs.length) + draw(step));
    const gate: Gate = { kind: 'notBefore', id: `in-${phase.jobId}`, at, cause: 'jobComesIn' };
    return { ...phase, gates: [...(phase.gates ?? []), gate] };
  });
  return { ...input, phases };
}

/** The slot by which the crews of a trade have been open for their work over the share. */
function whenDone(input: PlanInput, trade: string, busy: number): number {
  const crews = input.crews.filter(({ trades }) => trades.includes(trade));
  const work = input.phases
    .filter((phase) => phase.trade === trade && phase.duration.kind === 'work')
    .reduce((sum, { duration }) => sum + duration.slots, 0);
  let left = work / busy;
  const open = crews
    .flatMap(({ calendarId }) => input.calendars.find(({ id }) => id === calendarId)!.open)
    .sort((a, b) => a.to - b.to);
  for (const { from, to } of open) {
    left -= to - from;
    if (left <= 0) return to;
  }
  return input.horizon;
}
