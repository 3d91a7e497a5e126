import type { Prisma } from '../../generated/prisma/client.js';
import { z } from 'zod';
import type { Transaction } from '../../platform/database/database.js';

/** Work so far ahead is affected by a hold. */
const AHEAD_MS = 72 * 3_600_000;

const FACTS = {
  site: true,
  phase: { include: { area: true, planned: true, job: true } },
} satisfies Prisma.WeatherHoldInclude;

/** A hold with the site and the phase it holds; no phase when the whole site is held. */
export type WeatherHoldFacts = Prisma.WeatherHoldGetPayload<{ include: typeof FACTS }>;

const named = z.object({
  holds: z.array(z.object({ id: z.uuid(), telling: z.number() })),
  by: z.uuid().nullable(),
});

/** Holds that an outbox row names, each with how often it had been told, and who caused it. */
export type NamedHolds = z.infer<typeof named>;

/** What an outbox row names. @throws ZodError when it is no such row. */
export const namedHolds = (ids: unknown): NamedHolds => named.parse(ids);

/** The holds of these ids, in order of time. */
export function holdsOf(
  tx: Transaction,
  companyId: string,
  ids: readonly string[],
): Promise<WeatherHoldFacts[]> {
  return tx.weatherHold.findMany({
    where: { companyId, id: { in: [...ids] } },
    include: FACTS,
    orderBy: [{ startsAt: 'asc' }, { id: 'asc' }],
  });
}

/** Whether a hold still keeps anybody from work. */
export const stands = (
  { liftedAt, endsAt }: Pick<WeatherHoldFacts, 'liftedAt' | 'endsAt'>,
  now: Date,
): boolean => liftedAt === null && (endsAt === null || endsAt > now);

/** A phase that a hold keeps from work, with the crew that is to do it. */
export interface AffectedPhase {
  readonly name: string;
  readonly crewId: string | null;
  readonly jobId: string;
}

/** The phases that a hold affects: its own, or those of its site that are planned for the next 72 hours. */
export async function affectedBy(
  tx: Transaction,
  { companyId, siteId, phase }: WeatherHoldFacts,
  now: Date,
): Promise<AffectedPhase[]> {
  const phases = phase
    ? [phase]
    : await tx.phase.findMany({
        where: {
          companyId,
          job: { siteId, state: { in: ['entered', 'running'] } },
          state: { in: ['waiting', 'started'] },
          durationKind: 'work',
          planned: { startAt: { lt: new Date(now.getTime() + AHEAD_MS) }, finishAt: { gt: now } },
        },
        include: { planned: true, area: true },
        orderBy: { id: 'asc' },
      });
  return phases.map((one) => ({
    name: one.area ? `${one.name} (${one.area.name})` : one.name,
    crewId: one.actualCrewId ?? one.planned?.crewId ?? one.requiredCrewId,
    jobId: one.jobId,
  }));
}

/** Source key of a notice about holds; each stands in it as `id:telling`. */
export const holdsKey = (kind: string, { holds }: Pick<NamedHolds, 'holds'>): string =>
  `${kind} ${holds
    .map(({ id, telling }) => `${id}:${telling}`)
    .sort()
    .join(' ')}`;

/** The ids of the holds in a source key. */
export const idsIn = (sourceKey: string): string[] =>
  sourceKey
    .split(' ')
    .slice(1)
    .map((part) => part.split(':')[0] ?? '');
