import type { Prisma } from '../generated/prisma/client.js';

/** The holds that are not lifted and not over at a moment, those still to begin among them. */
export function standingHold(at: Date): Prisma.WeatherHoldWhereInput {
  return { liftedAt: null, OR: [{ endsAt: null }, { endsAt: { gt: at } }] };
}

/** The holds of the forecast that a person has lifted before their end: that person answers for the protection in place. */
export function answeredFor(at: Date): Prisma.WeatherHoldWhereInput {
  return { cause: 'forecast', liftedById: { not: null }, endsAt: { gt: at } };
}
