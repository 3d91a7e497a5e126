import type { Prisma } from '../generated/prisma/client.js';
import type { Forecast } from '../../shared/weather/forecast.js';
import { type ClosedStretch, weatherWindows } from '../../shared/weather/weather-windows.js';
import { epochMs, HOUR_MS } from '../../shared/units/time.js';
import type { Change } from '../platform/change/change.js';
import { limitSetsInForce } from './limit-sets.js';
import { protectionOf } from './protection.js';
import { storeCauses } from './stored-causes.js';
import { answeredFor, standingHold } from './standing-hold.js';

/** How far ahead a forecast holds work. */
const AHEAD = 72 * HOUR_MS;

const PHASE = {
  planned: true,
  holds: { include: { pool: true } },
  weatherHolds: true,
} satisfies Prisma.PhaseInclude;
type PhaseRow = Prisma.PhaseGetPayload<{ include: typeof PHASE }>;

/**
 * Opens, moves and lifts the holds that a forecast causes: for every phase of the site whose planned work of the next
 * 72 hours meets a stretch that its limits close. A hold stays as long as its stretch is closed, though the plan has
 * gone around it; so the same forecast twice changes nothing. One that a person has lifted is not opened again.
 */
export async function syncForecastHolds(change: Change, siteId: string, forecast: Forecast): Promise<void> {
  const { tx, ctx, now } = change;
  const rows = await tx.weatherLimitSet.findMany({ where: { companyId: ctx.companyId } });
  const limits = new Map(limitSetsInForce(rows).map((set) => [set.key, set.limits]));
  const phases = await tx.phase.findMany({
    where: { companyId: ctx.companyId, job: { siteId }, weatherLimitKey: { not: null } },
    include: {
      ...PHASE,
      weatherHolds: { where: { cause: 'forecast', OR: [standingHold(now), answeredFor(now)] } },
    },
    orderBy: { id: 'asc' },
  });
  const from = epochMs(now.getTime());
  for (const phase of phases) {
    const live = phase.state === 'waiting' || phase.state === 'started';
    const protection = protectionOf(phase.holds);
    const own = limits.get(phase.weatherLimitKey ?? '') ?? [];
    const windows = weatherWindows(own, forecast, from, epochMs(from + AHEAD), { protection });
    const known = windows.unknownAfter ?? from + AHEAD;
    await syncPhase(change, siteId, phase, live ? windows.closed : [], known, forecast);
  }
}

async function syncPhase(
  change: Change,
  siteId: string,
  phase: PhaseRow,
  closed: readonly ClosedStretch[],
  known: number,
  forecast: Forecast,
): Promise<void> {
  const held = new Set<ClosedStretch>();
  for (const hold of phase.weatherHolds) {
    const begins = hold.startsAt.getTime();
    const stretch = closed.find(
      (one) => one.from < (hold.endsAt?.getTime() ?? Infinity) && one.to > begins && !held.has(one),
    );
    if (hold.liftedAt) {
      for (const one of closed)
        if (one.from < (hold.endsAt?.getTime() ?? Infinity) && one.to > begins) held.add(one);
    } else if (stretch) {
      held.add(stretch);
      await moveHold(change, phase, hold, stretch);
    } else if (begins < known) {
      await liftHold(change, phase, hold.id, forecast);
    }
  }
  const segments = (phase.planned?.segments ?? []) as [number, number][];
  for (const stretch of closed) {
    const meets = segments.some(([start, finish]) => start < stretch.to && finish > stretch.from);
    if (meets && !held.has(stretch)) await openHold(change, siteId, phase, stretch);
  }
}

function facts(stretch: ClosedStretch) {
  const { causes } = stretch;
  return {
    endsAt: new Date(stretch.to),
    reason: causes.map(({ text }) => text).join('; '),
    detail: storeCauses(causes),
  };
}

async function openHold(
  change: Change,
  siteId: string,
  phase: PhaseRow,
  stretch: ClosedStretch,
): Promise<void> {
  const { companyId } = change.ctx;
  const startsAt = new Date(stretch.from);
  const hold = await change.tx.weatherHold.create({
    data: { companyId, siteId, phaseId: phase.id, cause: 'forecast', startsAt, ...facts(stretch) },
  });
  tell(change, phase, hold.id, 'weather hold opened by the forecast', hold.reason);
}

/** A stretch that has begun keeps its begin: the forecast is read from now on only. */
async function moveHold(
  change: Change,
  phase: PhaseRow,
  hold: PhaseRow['weatherHolds'][number],
  stretch: ClosedStretch,
): Promise<void> {
  const next = facts(stretch);
  const startsAt = new Date(hold.startsAt <= change.now ? hold.startsAt : stretch.from);
  const same =
    hold.startsAt.getTime() === startsAt.getTime() &&
    hold.endsAt?.getTime() === next.endsAt.getTime() &&
    hold.reason === next.reason;
  if (same) return;
  await change.tx.weatherHold.update({
    where: { id: hold.id },
    data: { startsAt, ...next, revision: { increment: 1 } },
  });
  tell(change, phase, hold.id, 'weather hold moved by the forecast', next.reason);
}

async function liftHold(change: Change, phase: PhaseRow, id: string, { issuedAt }: Forecast): Promise<void> {
  const liftReason = `The forecast issued ${new Date(issuedAt).toISOString()} no longer breaks the limit.`;
  await change.tx.weatherHold.update({
    where: { id },
    data: { liftedAt: change.now, liftReason, revision: { increment: 1 } },
  });
  tell(change, phase, id, 'weather hold lifted by the forecast', liftReason);
}

function tell(change: Change, { name, jobId }: PhaseRow, id: string, action: string, reason: string): void {
  change.record({
    action,
    subjectType: 'weatherHold',
    subjectId: id,
    jobId,
    detail: { phase: name },
    reason,
  });
}
