import type { Transaction } from '../../platform/database/database.js';
import { failingReadings, needsByHookup } from '../../heating/heating.face.js';
import { storedFindings } from '../../design/design.face.js';
import { gatherCrews } from './gather-crews.js';
import { gatherEquipment } from './gather-equipment.js';
import { gatherWeather } from './gather-weather.js';
import type { PhaseFacts } from './phase-facts.js';

/** For which phases facts are wanted, and for when. */
export interface FactsWanted {
  readonly companyId: string;
  readonly phaseIds: readonly string[];
  readonly at: Date;
  /** The crew that was asked for, in place of the one required, committed or planned. */
  readonly crewId?: string | null;
}

/** Gathers what decides whether phases may start or finish; the number of queries does not grow with the phases. */
export async function gatherFacts(tx: Transaction, wanted: FactsWanted): Promise<Map<string, PhaseFacts>> {
  const { companyId, phaseIds, at } = wanted;
  const phases = await tx.phase.findMany({
    where: { companyId, id: { in: [...phaseIds] } },
    include: {
      job: { include: { site: { select: { zone: true } } } },
      linksTo: { include: { from: true }, orderBy: { id: 'asc' } },
      holdPoints: {
        include: { inspection: true, clearance: true },
        orderBy: [{ gate: 'asc' }, { id: 'asc' }],
      },
      hookups: true,
      area: { select: { key: true } },
    },
  });
  const equipment = await gatherEquipment(tx, companyId, phaseIds);
  const weather = await gatherWeather(tx, companyId, phases, equipment);
  const crews = await gatherCrews(tx, wanted, phases);
  const hookups = phases.flatMap((phase) => phase.hookups);
  const sets = phases.flatMap(({ holdPoints }) =>
    holdPoints.flatMap(({ heatingSetId }) => heatingSetId ?? []),
  );
  const failing = await failingReadings(tx, companyId, [...new Set(sets)]);
  const needs = await needsByHookup(tx, companyId, hookups, at);
  return new Map(
    phases.map(
      ({
        job: { site, ...job },
        linksTo,
        holdPoints,
        hookups: [hookup],
        area,
        ...phase
      }): [string, PhaseFacts] => [
        phase.id,
        {
          phase,
          job,
          areaKey: area?.key ?? null,
          designFindings: storedFindings(job),
          zone: site.zone,
          predecessors: linksTo.map(({ from, ...link }) => ({ link, phase: from })),
          holdPoints,
          weatherHolds: weather.holdsOf(phase, job),
          weather: weather.factsOf(phase, job),
          crew: crews.crewOf(phase.id),
          crewWork: crews.workOf(phase.id),
          equipment: equipment.get(phase.id)?.facts ?? [],
          failing: [...new Set(holdPoints.map(({ heatingSetId }) => heatingSetId ?? ''))].flatMap(
            (id) => failing.get(id) ?? [],
          ),
          hookup: hookup ? { row: hookup, needs: needs.get(hookup.id)?.hookup ?? [] } : null,
        },
      ],
    ),
  );
}
