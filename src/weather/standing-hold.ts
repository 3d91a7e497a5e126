import type { Prisma } from '../generated/prisma/client.js';

/** The holds that are not lifted and not over at a moment, those still to begin among them. */
export function standingHold(at: Date): Prisma.WeatherHoldWhereInput {
  return { liftedAt: null, OR: [{ endsAt: null }, { endsAt: { gt: at } }] };
}
