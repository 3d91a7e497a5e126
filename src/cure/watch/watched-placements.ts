import type { Prisma } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';

/** Concrete is watched so long from placing at most. */
const WATCH_MS = 60 * 24 * 3_600_000;

const WATCHED = {
  readings: { orderBy: { at: 'asc' } },
  alarms: { where: { clearedAt: null } },
  job: { select: { siteId: true, state: true } },
  phase: { select: { name: true, state: true } },
} satisfies Prisma.PlacementInclude;

type Row = Prisma.PlacementGetPayload<{ include: typeof WATCHED }>;

/** A placement that is watched, and whether its strength has been decided about. */
export type WatchedRow = Row & { readonly decided: boolean };

/** The placements of a company that cure, or at which an alarm stands. */
export async function watchedPlacements({ tx, ctx, now }: Change): Promise<WatchedRow[]> {
  const { companyId } = ctx;
  const rows = await tx.placement.findMany({
    where: {
      companyId,
      OR: [
        {
          placedAt: { gt: new Date(now.getTime() - WATCH_MS) },
          job: { state: { in: ['entered', 'running'] } },
        },
        { alarms: { some: { clearedAt: null } } },
      ],
    },
    include: WATCHED,
    orderBy: { id: 'asc' },
  });
  if (rows.length === 0) return [];
  const points = await tx.holdPoint.findMany({
    where: { companyId, kind: 'cure', placementPhaseId: { in: rows.map(({ phaseId }) => phaseId) } },
    select: { placementPhaseId: true, state: true },
  });
  return rows.map((row) => {
    const own = points.filter(({ placementPhaseId }) => placementPhaseId === row.phaseId);
    const open = own.some(({ state }) => state === 'open' || state === 'refused');
    return { ...row, decided: own.length > 0 && !open };
  });
}
