import type { PlanningRows } from '../../planning/planning.face.js';
import { kindsOf } from '../protection/protection-spec.js';
import type { Pour } from './pour.js';

/** One way with a pour, as the plan needs it. */
export interface BranchSpec {
  readonly branch: 'protect' | 'wait';
  /** How long its cure is expected to take; null as long as nobody knows. */
  readonly cureMinutes: number | null;
  /** Before this it is not placed; null when it may be at any time. */
  readonly notBefore: Date | null;
}

/** Kinds of equipment that protect; mixers and the like are taken either way. */
export const PROTECTING: readonly string[] = ['blanket', 'enclosure', 'heater'];

/** How much of each kind of the company's stock a branch takes, by pool id. */
export function equipmentOf(rows: PlanningRows, pour: Pour, { branch }: BranchSpec): Map<string, number> {
  const taken = new Map<string, number>();
  if (branch === 'wait') return taken;
  const kinds = kindsOf(pour.protection);
  for (const pool of rows.pools) {
    if (!kinds.includes(pool.kind)) continue;
    const planned = pour.phase.holds.find(({ poolId }) => poolId === pool.id)?.quantity;
    const layers = pool.kind === 'blanket' ? Math.max(1, pour.protection.blanketLayers) : 1;
    taken.set(pool.id, planned ?? layers);
  }
  return taken;
}

/** The rows of a company as they would be had this branch been chosen. Nothing else is different. */
export function branchRows(rows: PlanningRows, pour: Pour, spec: BranchSpec, now: Date): PlanningRows {
  const { phase, cure } = pour;
  const { companyId, id: phaseId } = phase;
  const pools = new Map(rows.pools.map((pool) => [pool.id, pool]));
  const protects = (poolId: string) => PROTECTING.includes(pools.get(poolId)?.kind ?? '');
  const others = rows.holds.filter((hold) => hold.fromPhaseId !== phaseId || !protects(hold.poolId));
  const own = [...equipmentOf(rows, pour, spec)].map(([poolId, quantity]) => ({
    id: `${spec.branch} ${poolId}`,
    companyId,
    poolId,
    quantity,
    fromPhaseId: phaseId,
    untilPhaseId: cure?.id ?? phaseId,
  }));
  const choice = {
    id: spec.branch,
    companyId,
    phaseId,
    branch: spec.branch,
    plan: null,
    cureMinutes: spec.cureMinutes,
    comparison: {},
    reason: null,
    chosenAt: now,
    chosenById: null,
    revision: 1,
  };
  return {
    ...rows,
    holds: [...others, ...own],
    choices: [...rows.choices.filter((one) => one.phaseId !== phaseId), choice],
    weatherHolds: [...rows.weatherHolds, ...waitHold(pour, spec, now)],
  };
}

/** Waiting for a later window is a hold of the phase until then. */
function waitHold({ phase }: Pour, { notBefore }: BranchSpec, now: Date): PlanningRows['weatherHolds'] {
  if (notBefore === null) return [];
  return [
    {
      id: 'wait',
      companyId: phase.companyId,
      siteId: phase.job.siteId,
      phaseId: phase.id,
      cause: 'called',
      startsAt: now,
      endsAt: notBefore,
      reason: WAIT_REASON,
      detail: null,
      openedFor: null,
      openedAt: now,
      basis: null,
      told: null,
      tellings: 0,
      calledById: null,
      liftedAt: null,
      liftedById: null,
      liftReason: null,
      revision: 1,
    },
  ];
}

/** Why a phase is held that waits for a later window. */
export const WAIT_REASON =
  'Waiting was chosen: placed before, it would freeze before 500 psi without protection';
