import type { EntryPlanDraft } from '../../../shared/entry/template/draft.js';
import type { Change } from '../../platform/change/change.js';
import { DraftIds } from './draft-ids.js';
import { heatingSetRow } from './heating-set-row.js';
import { storedItems } from './hold-point-row.js';

/** The job a draft belongs to, and what its rows refer to outside of it. */
export interface DraftOwner {
  readonly jobId: string;
  readonly authorityId: string | null;
  /** Pools by kind of equipment. */
  readonly pools: DraftIds;
}

const KEYED = { key: true, id: true } as const;

/** Writes everything a new job is made of, a statement for each kind of row. */
export async function writeDraft(change: Change, draft: EntryPlanDraft, owner: DraftOwner): Promise<void> {
  const { tx } = change;
  const own = { companyId: change.ctx.companyId, jobId: owner.jobId };
  const areas = new DraftIds(
    'area',
    await tx.area.createManyAndReturn({
      select: KEYED,
      data: draft.areas.map((area) => ({
        ...own,
        ...area,
        quantities: area.quantities,
      })),
    }),
  );
  const phases = await writePhases(change, draft, own, areas);
  const sets = await writeHeatingSets(change, draft, own, areas);
  await tx.link.createMany({
    data: draft.links.map(({ from, to, ...link }) => ({
      ...own,
      ...link,
      fromId: phases.of(from),
      toId: phases.of(to),
      origin: 'template' as const,
    })),
  });
  await tx.equipmentHold.createMany({
    data: draft.equipmentHolds.map(({ pool, quantity, from, until }) => ({
      companyId: own.companyId,
      poolId: owner.pools.of(pool),
      quantity,
      fromPhaseId: phases.of(from),
      untilPhaseId: phases.of(until),
    })),
  });
  await tx.hookup.createMany({
    data: draft.hookups.map(({ heatingSetKey, phaseKey }) => ({
      ...own,
      heatingSetId: sets.of(heatingSetKey),
      phaseId: phases.of(phaseKey),
    })),
  });
  await writeHoldPoints(change, draft, owner, { phases, sets });
}

type Own = { readonly companyId: string; readonly jobId: string };

async function writePhases(
  { tx }: Change,
  draft: EntryPlanDraft,
  own: Own,
  areas: DraftIds,
): Promise<DraftIds> {
  const rows = await tx.phase.createManyAndReturn({
    select: KEYED,
    data: draft.phases.map(({ areaKey, heatingSetKey: _set, crewSize: _size, ...phase }) => ({
      ...own,
      ...phase,
      areaId: areas.orNull(areaKey),
      origin: 'template' as const,
    })),
  });
  return new DraftIds('phase', rows);
}

async function writeHeatingSets(
  { tx }: Change,
  draft: EntryPlanDraft,
  own: Own,
  areas: DraftIds,
): Promise<DraftIds> {
  const rows = await tx.heatingSet.createManyAndReturn({
    select: KEYED,
    data: draft.heatingSets.map((set) => ({ ...own, ...heatingSetRow(set) })),
  });
  const sets = new DraftIds('heating set', rows);
  await tx.heatingSetArea.createMany({
    data: draft.heatingSets.flatMap((set) =>
      set.areas.map((area, position) => ({
        companyId: own.companyId,
        heatingSetId: sets.of(set.key),
        areaId: areas.of(area),
        position,
      })),
    ),
  });
  return sets;
}

async function writeHoldPoints(
  { ctx, tx }: Change,
  draft: EntryPlanDraft,
  { jobId, authorityId }: DraftOwner,
  { phases, sets }: { phases: DraftIds; sets: DraftIds },
): Promise<void> {
  const own = { companyId: ctx.companyId, jobId };
  const clearances = new DraftIds(
    'clearance',
    await tx.clearance.createManyAndReturn({
      select: KEYED,
      data: draft.clearances.map((clearance) => ({ ...own, ...clearance })),
    }),
  );
  const inspections = new DraftIds(
    'inspection',
    await tx.inspection.createManyAndReturn({
      select: KEYED,
      data: draft.inspections.map(({ key, phaseKey, title }) => ({
        ...own,
        key,
        title,
        authorityId,
        phaseId: phases.of(phaseKey),
      })),
    }),
  );
  await tx.holdPoint.createMany({
    data: draft.holdPoints.map((point) => ({
      ...own,
      phaseId: phases.of(point.phaseKey),
      key: point.key,
      kind: point.kind,
      gate: point.gate,
      title: point.title,
      items: storedItems(point),
      caution: point.caution,
      waivable: point.waivable,
      inspectionId: inspections.orNull(point.inspectionKey),
      clearanceId: clearances.orNull(point.clearanceKey),
      heatingSetId: sets.orNull(point.heatingSetKey),
      placementPhaseId: phases.orNull(point.placementPhaseKey),
      readingStage: point.readingStage,
    })),
  });
}
