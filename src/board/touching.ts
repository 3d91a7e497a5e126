import type { Prisma } from '../generated/prisma/client.js';
import type { BoardRange } from './board-range.js';

/** The condition that a phase's planned, committed or actual time touches a stretch. */
export function touching({ from, to }: BoardRange): Prisma.PhaseWhereInput {
  const over = { startAt: { lt: to }, OR: [{ finishAt: { gt: from } }, { startAt: { gte: from } }] };
  return {
    OR: [
      { planned: { is: over } },
      { commitments: { some: { state: 'held', ...over } } },
      {
        actualStart: { lt: to },
        OR: [{ actualFinish: null }, { actualFinish: { gt: from } }, { actualStart: { gte: from } }],
      },
    ],
  };
}

/** The condition that one of the crews is to do a phase, does it or did it. */
export function doneBy(crewIds: readonly string[]): Prisma.PhaseWhereInput {
  const within = { in: [...crewIds] };
  return {
    OR: [
      { actualCrewId: within },
      { actualCrewId: null, planned: { is: { crewId: within } } },
      { commitments: { some: { state: 'held', crewId: within } } },
      { requiredCrewId: within },
    ],
  };
}
