import type { LinkKind, PlanInput } from '../../../shared/schedule/model.js';
import { slot } from '../../../shared/schedule/slot.js';
import type { Link } from '../../generated/prisma/client.js';
import { gatherCalendars, gatherCrews } from './gather-calendars.js';
import { ANY_TIME, gatherInspections } from './gather-inspections.js';
import { gatherPhases } from './gather-phases.js';
import { gatherWeather } from './gather-weather.js';
import type { PlanningRows } from './rows.js';
import { slotsOf, TimeFrame } from './time-frame.js';

const KINDS: Readonly<Record<Link['kind'], LinkKind>> = {
  finishStart: 'FS',
  startStart: 'SS',
  finishFinish: 'FF',
  startFinish: 'SF',
};

/** The axis for these rows at this moment. */
export function frameOf(rows: PlanningRows, nowMs: number, days: number): TimeFrame {
  const starts = rows.phases.flatMap(({ state, actualStart }) =>
    state === 'started' && actualStart ? [actualStart.getTime()] : [],
  );
  return new TimeFrame(nowMs, Math.min(nowMs, ...starts), days);
}

/** What the engine plans, from the rows. Equal rows at the same moment give an equal input. */
export function gather(rows: PlanningRows, frame: TimeFrame): PlanInput {
  const freezeUntil = slot(frame.now + slotsOf(rows.company.freezeDays * 24 * 60));
  const inspections = gatherInspections(rows, frame);
  const weather = gatherWeather(rows, frame);
  const always = [{ from: slot(frame.at(0)), to: slot(frame.slots) }];
  return {
    horizon: frame.slots,
    now: frame.now,
    freezeUntil,
    calendars: [...gatherCalendars(rows, frame), { id: ANY_TIME, open: always }],
    crews: gatherCrews(rows),
    pools: rows.pools.map(({ id, quantity }) => ({ id, quantity })),
    weather: weather.sets,
    inspections: inspections.map(({ inspection }) => inspection),
    jobs: rows.jobs.map(({ id, priority, dueAt }) => ({
      id,
      priority,
      due: dueAt ? frame.before(dueAt) : undefined,
    })),
    phases: gatherPhases(rows, frame, freezeUntil, inspections, weather),
    links: rows.links.map(({ id, fromId, toId, kind, lagMinutes, lagIn }) => ({
      id,
      from: fromId,
      to: toId,
      kind: KINDS[kind],
      lag: slotsOf(lagMinutes),
      lagIn,
    })),
  };
}
