import type { Crew, Phase } from '../../generated/prisma/client.js';
import type { Transaction } from '../../platform/database/database.js';
import { rowIds } from '../../platform/row-id.js';
import type { FactsWanted } from './gather-facts.js';

/** Crews of many phases, looked up by phase. */
export interface GatheredCrews {
  crewOf(phaseId: string): Crew | null;
  workOf(phaseId: string): Phase[];
}

/** Finds who would do each phase (asked for, required, committed, planned) and what else that crew is at. */
export async function gatherCrews(
  tx: Transaction,
  { companyId, at, crewId }: FactsWanted,
  phases: readonly Phase[],
): Promise<GatheredCrews> {
  const ids = phases.map(({ id }) => id);
  const committed = await tx.commitment.findMany({
    where: { companyId, phaseId: { in: ids }, state: 'held' },
    select: { phaseId: true, crewId: true },
  });
  const planned = await tx.plannedPhase.findMany({
    where: { companyId, phaseId: { in: ids } },
    select: { phaseId: true, crewId: true },
  });
  const chosen = new Map(
    phases.map((phase) => [
      phase.id,
      crewId ??
        phase.actualCrewId ??
        phase.requiredCrewId ??
        committed.find(({ phaseId }) => phaseId === phase.id)?.crewId ??
        planned.find(({ phaseId }) => phaseId === phase.id)?.crewId ??
        null,
    ]),
  );
  const crewIds = rowIds([...new Set([...chosen.values()].flatMap((id) => id ?? []))]);
  const crews = await tx.crew.findMany({ where: { companyId, id: { in: crewIds } } });
  const work = await tx.phase.findMany({
    where: {
      companyId,
      actualCrewId: { in: crewIds },
      OR: [{ state: 'started' }, { state: 'done', actualStart: { lte: at }, actualFinish: { gt: at } }],
    },
    orderBy: [{ actualStart: 'asc' }, { id: 'asc' }],
  });
  const crewIdOf = (phaseId: string): string | null => chosen.get(phaseId) ?? null;
  return {
    crewOf: (phaseId) => crews.find(({ id }) => id === crewIdOf(phaseId)) ?? null,
    workOf: (phaseId) =>
      work.filter(({ id, actualCrewId }) => id !== phaseId && actualCrewId === crewIdOf(phaseId)),
  };
}
