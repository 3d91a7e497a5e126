import type { Prisma } from '../../generated/prisma/client.js';
import { HOUR_MS } from '../../../shared/units/time.js';
import type { Change } from '../../platform/change/change.js';

/** A hold moved by less is not told again. */
const WORTH_TELLING_MS = 2 * HOUR_MS;

/** A hold that begins so soon is told in quiet hours too. */
const SOON_MS = 12 * HOUR_MS;

/** What people were told of a hold. */
export interface ToldHold {
  readonly startsAt: string;
  readonly endsAt: string | null;
  readonly limits: readonly string[];
}

/** What there is to tell of a hold. */
export function toTell(
  startsAt: Date,
  endsAt: Date | null,
  limits: readonly string[] = [],
): ToldHold & Prisma.InputJsonObject {
  return { startsAt: startsAt.toISOString(), endsAt: endsAt?.toISOString() ?? null, limits: [...limits] };
}

/** Whether a hold differs from what people were told by more than they would act on: two hours, or another limit. */
export function isWorthTelling(told: ToldHold | null, now: ToldHold): boolean {
  if (!told) return true;
  if (now.limits.some((id) => !told.limits.includes(id))) return true;
  return isFar(told.startsAt, now.startsAt) || isFar(told.endsAt, now.endsAt);
}

function isFar(a: string | null, b: string | null): boolean {
  if (a === null || b === null) return a !== b;
  return Math.abs(Date.parse(a) - Date.parse(b)) >= WORTH_TELLING_MS;
}

/** A hold that is told, as it stands. */
export interface TellingHold {
  readonly id: string;
  readonly startsAt: Date;
  /** How often it has been told, this time counted. */
  readonly telling: number;
}

/** Asks for one notice about holds of one phase, or of one site. */
export async function tellHolds(change: Change, holds: readonly TellingHold[]): Promise<void> {
  if (holds.length === 0) return;
  const soon = holds.some(({ startsAt }) => startsAt.getTime() < change.now.getTime() + SOON_MS);
  await change.later(soon ? 'weather-hold-soon' : 'weather-hold', {
    holds: holds.map(({ id, telling }) => ({ id, telling })),
    by: change.ctx.personId || null,
  });
}

/** Asks for one notice that holds of one phase, or of one site, are lifted; it goes to those who were told of them. */
export async function tellLifted(change: Change, ids: readonly string[]): Promise<void> {
  if (ids.length === 0) return;
  await change.later('weather-hold-lifted', { holdIds: [...ids], by: change.ctx.personId || null });
}
