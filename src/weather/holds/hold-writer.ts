import type { Prisma, WeatherHold } from '../../generated/prisma/client.js';
import type { Stretch } from '../../../shared/weather/stretch.js';
import type { HoldMove } from '../../../shared/weather/settle-holds.js';
import type { ClosedStretch } from '../../../shared/weather/weather-windows.js';
import type { Change } from '../../platform/change/change.js';
import { storeCauses, storedCauses } from '../stored-causes.js';
import { JOINED, liftReason, openedFor, type HoldOccasion } from './hold-words.js';
import {
  isWorthTelling,
  tellHolds,
  type TellingHold,
  tellLifted,
  type ToldHold,
  toTell,
} from './tell-holds.js';
import type { WatchedPhase } from './watched-sites.js';

/** Why the holds of a phase are looked at, and what they rest on. */
export interface WritingOccasion extends Omit<HoldOccasion, 'added'> {
  readonly basis: Prisma.InputJsonObject & { readonly protection: readonly string[] };
}

/** Writes what becomes of the holds of one phase, journals it, and tells people once of what matters to them. */
export async function writeMoves(
  change: Change,
  phase: WatchedPhase,
  moves: readonly HoldMove[],
  occasion: WritingOccasion,
): Promise<void> {
  const told: TellingHold[] = [];
  const lifted: string[] = [];
  const rows = new Map(phase.weatherHolds.map((row) => [row.id, row]));
  for (const move of moves) {
    const row = 'id' in move ? rows.get(move.id) : undefined;
    if (move.kind === 'open') told.push(await open(change, phase, move.stretch, occasion));
    else if (row && move.kind === 'keep')
      told.push(...(await keep(change, phase, row, move.stretch, occasion)));
    else if (row && move.kind === 'cut') await cut(change, phase, row, move.stretch);
    else if (row && move.kind === 'lift') {
      await lift(
        change,
        phase,
        row,
        move.into ? JOINED : liftReason({ ...occasion, added: added(row, occasion) }),
      );
      if (!move.into && row.tellings > 0) lifted.push(row.id);
    }
  }
  await tellHolds(change, told);
  await tellLifted(change, lifted);
}

/** Protection that a hold was opened without. */
function added({ basis }: WeatherHold, { basis: { protection } }: WritingOccasion): string[] {
  const before = (basis as { protection?: readonly string[] } | null)?.protection ?? [];
  return protection.filter((kind) => !before.includes(kind));
}

const limitIds = ({ causes }: ClosedStretch): string[] => causes.map(({ limitId }) => limitId);
const reasonOf = ({ causes }: ClosedStretch): string => causes.map(({ text }) => text).join('; ');

async function open(
  change: Change,
  phase: WatchedPhase,
  stretch: ClosedStretch,
  occasion: WritingOccasion,
): Promise<TellingHold> {
  const startsAt = new Date(stretch.from);
  const endsAt = new Date(stretch.to);
  const hold = await change.tx.weatherHold.create({
    data: {
      companyId: change.ctx.companyId,
      siteId: phase.job.siteId,
      phaseId: phase.id,
      cause: 'forecast',
      startsAt,
      endsAt,
      reason: reasonOf(stretch),
      detail: storeCauses(stretch.causes),
      openedFor: openedFor(occasion),
      openedAt: change.now,
      basis: occasion.basis,
      told: toTell(startsAt, endsAt, limitIds(stretch)),
      tellings: 1,
    },
  });
  journal(change, phase, hold.id, 'weather hold opened by the forecast', hold.reason);
  return { id: hold.id, startsAt, telling: 1 };
}

/** A hold that has begun keeps its begin. One whose values alone changed keeps its revision, and nobody is told. */
async function keep(
  change: Change,
  phase: WatchedPhase,
  row: WeatherHold,
  stretch: ClosedStretch,
  { basis }: WritingOccasion,
): Promise<TellingHold[]> {
  const startsAt = row.startsAt <= change.now ? row.startsAt : new Date(stretch.from);
  const endsAt = new Date(stretch.to);
  const reason = reasonOf(stretch);
  const next = toTell(startsAt, endsAt, limitIds(stretch));
  const before = toTell(
    row.startsAt,
    row.endsAt,
    storedCauses(row.detail).map(({ limitId }) => limitId),
  );
  const moved = JSON.stringify(before) !== JSON.stringify(next);
  if (!moved && row.reason === reason) return [];
  const telling = isWorthTelling(row.told as ToldHold | null, next);
  await change.tx.weatherHold.update({
    where: { id: row.id },
    data: {
      startsAt,
      endsAt,
      reason,
      detail: storeCauses(stretch.causes),
      basis,
      ...(moved ? { revision: { increment: 1 } } : {}),
      ...(telling ? { told: next, tellings: { increment: 1 } } : {}),
    },
  });
  if (moved) journal(change, phase, row.id, 'weather hold moved by the forecast', reason);
  return telling ? [{ id: row.id, startsAt, telling: row.tellings + 1 }] : [];
}

async function cut(
  change: Change,
  phase: WatchedPhase,
  row: WeatherHold,
  { from, to }: Stretch,
): Promise<void> {
  const startsAt = row.startsAt <= change.now && from <= change.now.getTime() ? row.startsAt : new Date(from);
  const endsAt = new Date(to);
  if (startsAt.getTime() === row.startsAt.getTime() && endsAt.getTime() === row.endsAt?.getTime()) return;
  await change.tx.weatherHold.update({
    where: { id: row.id },
    data: { startsAt, endsAt, revision: { increment: 1 } },
  });
  journal(change, phase, row.id, 'weather hold cut down to what is unknown', row.reason);
}

async function lift(change: Change, phase: WatchedPhase, { id }: WeatherHold, reason: string): Promise<void> {
  await change.tx.weatherHold.update({
    where: { id },
    data: { liftedAt: change.now, liftReason: reason, revision: { increment: 1 } },
  });
  journal(change, phase, id, 'weather hold lifted by the forecast', reason);
}

function journal(
  change: Change,
  { name, jobId }: WatchedPhase,
  id: string,
  action: string,
  reason: string,
): void {
  change.record({
    action,
    subjectType: 'weatherHold',
    subjectId: id,
    jobId,
    detail: { phase: name },
    reason,
  });
}
