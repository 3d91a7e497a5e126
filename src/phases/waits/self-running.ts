import type { Change } from '../../platform/change/change.js';

/**
 * The phases that may start or finish by themselves now: waits, moments of the authority, and those of recorded
 * hookups, whose predecessors are done. In the order of their jobs, so that equal rows give equal answers.
 */
export async function selfRunningPhases(change: Change): Promise<string[]> {
  const rows = await change.tx.phase.findMany({
    where: {
      companyId: change.ctx.companyId,
      job: { state: { in: ['entered', 'running'] } },
      AND: [
        { OR: [{ durationKind: 'elapsed' }, { hookups: { some: { doneAt: { not: null } } } }] },
        {
          OR: [
            { state: 'started' },
            {
              state: 'waiting',
              linksTo: {
                some: { from: { state: { in: ['started', 'done'] } } },
                none: {
                  kind: 'finishStart',
                  lagMinutes: { gte: 0 },
                  from: { state: { in: ['waiting', 'started'] } },
                },
              },
            },
          ],
        },
      ],
    },
    select: { id: true },
    orderBy: [{ jobId: 'asc' }, { position: 'asc' }, { id: 'asc' }],
  });
  return rows.map(({ id }) => id);
}
