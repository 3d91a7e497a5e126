import type { PlannedPhase as EnginePhase } from '../../../shared/schedule/model.js';
import { SLOT_MINUTES } from '../../../shared/schedule/slot.js';
import type { Phase, Prisma } from '../../generated/prisma/client.js';
import { type FinishCure, gatherFinishCures } from '../gather/gather-gates.js';
import type { PlanningRows } from '../gather/rows.js';
import { iso, storeReason, type ReasonFacts } from '../reasons/store-reason.js';
import type { StoredReason } from '../reasons/stored-reason.js';
import type { ComputedPlan } from './compute-plan.js';
import { storeConflict } from './store-conflict.js';
import type { StoredConflict, StoredConflicts } from './stored-conflict.js';

const NO_TIES: ReasonFacts['ties'] = new Map();

type PhaseRow = Omit<Prisma.PlannedPhaseCreateManyInput, 'companyId' | 'planNumber'>;
type VisitRow = Omit<Prisma.PlannedVisitCreateManyInput, 'companyId' | 'planNumber'>;

/** A plan in the form of its rows. */
export interface PlanRows {
  readonly phases: readonly PhaseRow[];
  readonly visits: readonly VisitRow[];
  readonly conflicts: StoredConflicts;
}

/** Turns a computed plan into rows: instants for slots, and for what has happened the moments at which it did. */
export function planRows(computed: ComputedPlan, rows: PlanningRows): PlanRows {
  const { frame, plan } = computed;
  const facts = { ...factsOf(computed, rows), ties: computed.pass.ties() };
  const stored = new Map(rows.phases.map((phase) => [phase.id, phase]));
  const cures = gatherFinishCures(rows);
  const explained = plan.phases.map((phase) => ({
    phase,
    reason: withCure(phase, storeReason(phase, facts), cures.get(phase.id), facts),
  }));
  return {
    phases: explained.flatMap(({ phase, reason }) => {
      const row = stored.get(phase.id);
      return row ? phaseRow(phase, row, reason, computed) : [];
    }),
    visits: plan.inspections.flatMap((visit): VisitRow[] => {
      if (visit.start === null || visit.finish === null) return [];
      const startAt = new Date(frame.ms(visit.start));
      const asked = rows.inspections.find(({ id }) => id === visit.id)?.requestedAt;
      const latest =
        visit.latestRequest === null ? (asked ?? startAt) : new Date(frame.ms(visit.latestRequest));
      return [
        { inspectionId: visit.id, startAt, finishAt: new Date(frame.ms(visit.finish)), requestBy: latest },
      ];
    }),
    conflicts: {
      conflicts: conflictsOfPlan(computed, rows),
      unplanned: Object.fromEntries(
        explained.filter(({ phase }) => phase.start === null).map(({ phase, reason }) => [phase.id, reason]),
      ),
    },
  };
}

/** The conflicts of a plan of these rows in their stored form. */
export function conflictsOfPlan(computed: ComputedPlan, rows: PlanningRows): StoredConflict[] {
  const facts = factsOf(computed, rows);
  const jobs = new Map(rows.phases.map(({ id, jobId }) => [id, jobId]));
  return computed.plan.conflicts.map((one) =>
    storeConflict(one, facts, (phaseId) => jobs.get(phaseId) ?? null),
  );
}

function factsOf({ plan, frame }: ComputedPlan, rows: PlanningRows): ReasonFacts {
  return {
    plan,
    frame,
    links: new Map(rows.links.map((link) => [link.id, link])),
    visits: new Map(plan.inspections.map((visit) => [visit.id, visit])),
    ties: NO_TIES,
  };
}

function phaseRow(phase: EnginePhase, row: Phase, reason: StoredReason, { frame }: ComputedPlan): PhaseRow[] {
  if (phase.start === null || phase.finish === null) return [];
  const startAt = row.actualStart ?? new Date(frame.ms(phase.start));
  const finishAt = row.actualFinish ?? new Date(Math.max(frame.ms(phase.finish), startAt.getTime()));
  const segments = phase.segments.map(({ from, to }) => [frame.ms(from), frame.ms(to)]);
  return [
    {
      phaseId: phase.id,
      startAt,
      finishAt,
      crewId: phase.crewId,
      segments: phase.state === 'done' ? [[startAt.getTime(), finishAt.getTime()]] : segments,
      totalFloatMinutes: (phase.totalFloat ?? 0) * SLOT_MINUTES,
      freeFloatMinutes: (phase.freeFloat ?? 0) * SLOT_MINUTES,
      critical: phase.critical,
      weatherUnknown: phase.weatherUnknown,
      reason: reason as unknown as Prisma.InputJsonObject,
    },
  ];
}

/** The reasons of a phase; a cure that has begun also says what strength it waits for. */
function withCure(
  phase: EnginePhase,
  reason: StoredReason,
  cure: FinishCure | undefined,
  { frame }: ReasonFacts,
): StoredReason {
  if (phase.state !== 'started' || !cure?.placement || cure.decided) return reason;
  const { predictedReleaseAt, requiredPsi } = cure.placement;
  const at = predictedReleaseAt?.toISOString() ?? iso(phase.finish, frame);
  const step = { kind: 'cure', at, strength: { now: null, needed: requiredPsi } };
  return { ...reason, steps: [...reason.steps, step] };
}
