import { HOUR_MS } from '../../../shared/units/time.js';
import type { PlanningRows } from '../../planning/planning.face.js';
import { findingOf } from '../../inspections/inspections.face.js';
import { outlookOf } from '../outlook/outlook-of.js';
import type { SiteAir } from '../outlook/site-air.js';
import { protectionModel } from '../protection/protection.model.js';
import { BARE } from '../protection/protection-spec.js';
import { equipmentOf } from './branch-rows.js';
import { type CarriedOut, carryOut, cureAt } from './carry-out.js';
import type { Pour } from './pour.js';
import type { BranchJob, BranchOutlook, ProtectOrWait } from './protect-or-wait.model.js';

const MINUTE_MS = 60_000;
const DAY_MS = 24 * HOUR_MS;

/** Air below this is cold weather. */
const COLD_F = 40;
const COLD_RULE =
  'Cold weather: air at or expected below 40 °F within the protection period (ACI 306R-16) [published]';

/** Both ways with a pour, with what the choice is about. */
export interface Comparison {
  readonly answer: ProtectOrWait;
  readonly protect: CarriedOut;
  readonly wait: CarriedOut;
}

/** Carries both branches through the plan and sets them side by side. Pure: equal rows give an equal answer. */
export function compare(rows: PlanningRows, pour: Pour, air: SiteAir, now: Date): Comparison {
  const protect = carryOut(rows, pour, 'protect', air, now);
  const wait = carryOut(rows, pour, 'wait', air, now);
  const bare = protect.placedAt ? cureAt(pour, 'wait', protect.placedAt.getTime(), air).prediction : null;
  return {
    protect,
    wait,
    answer: {
      phaseId: pour.phase.id,
      cold: (bare?.points ?? []).some((point) => point.air !== null && point.air < COLD_F),
      coldRule: COLD_RULE,
      protect: branchOutlook(rows, pour, protect),
      wait: branchOutlook(rows, pour, wait),
      bare: bare && outlookOf(bare, pour.requiredPsi),
      jobs: jobsOf(rows, protect, wait),
    },
  };
}

function branchOutlook(rows: PlanningRows, pour: Pour, carried: CarriedOut): BranchOutlook {
  const { spec, computed, placedAt, cure } = carried;
  const { plan, frame } = computed;
  const at = (slot: number | null | undefined) => (slot == null ? null : new Date(frame.ms(slot as never)));
  const phaseOf = (id: string | undefined) => plan.phases.find((phase) => phase.id === id);
  const phase = phaseOf(pour.phase.id);
  const curedAt = at(phaseOf(pour.cure?.id)?.finish ?? phase?.finish);
  const finishes = plan.jobs.flatMap(({ finish }) => finish ?? []);
  return {
    branch: spec.branch,
    placedAt,
    curedAt,
    jobFinish: at(plan.jobs.find(({ id }) => id === pour.phase.jobId)?.finish),
    allFinish: finishes.length > 0 ? at(Math.max(...finishes)) : null,
    protection: protectionModel(spec.branch === 'protect' ? pour.protection : BARE),
    equipmentDays: equipmentDays(rows, pour, carried, at(phase?.start), curedAt),
    heatingHours: cure?.equipment.heatingHours ?? 0,
    outlook: cure && outlookOf(cure.prediction, pour.requiredPsi),
    placing: cure && findingOf(cure.placing),
    weatherUnknown: phase?.weatherUnknown ?? true,
    conflicts: plan.conflicts.length,
    cautions: [...(cure?.cautions ?? ['The plan finds no place for it: see its conflicts.'])],
  };
}

/** What the plan takes out of the stock for it: from the start of the pour until its cure ends. */
function equipmentDays(
  rows: PlanningRows,
  pour: Pour,
  { spec }: CarriedOut,
  from: Date | null,
  to: Date | null,
): number {
  if (!from || !to) return 0;
  const pieces = [...equipmentOf(rows, pour, spec).values()].reduce((sum, count) => sum + count, 0);
  return Math.round(((pieces * (to.getTime() - from.getTime())) / DAY_MS) * 10) / 10;
}

function jobsOf(rows: PlanningRows, protect: CarriedOut, wait: CarriedOut): BranchJob[] {
  const finishIn = ({ computed }: CarriedOut, id: string): Date | null => {
    const finish = computed.plan.jobs.find((job) => job.id === id)?.finish ?? null;
    return finish === null ? null : new Date(computed.frame.ms(finish));
  };
  return rows.jobs
    .map(({ id }): BranchJob => {
      const protectFinish = finishIn(protect, id);
      const waitFinish = finishIn(wait, id);
      const known = protectFinish !== null && waitFinish !== null;
      const later = known ? (waitFinish.getTime() - protectFinish.getTime()) / MINUTE_MS : null;
      return { jobId: id, protectFinish, waitFinish, waitLaterMinutes: later };
    })
    .sort(
      (a, b) =>
        Math.abs(b.waitLaterMinutes ?? 0) - Math.abs(a.waitLaterMinutes ?? 0) || (a.jobId < b.jobId ? -1 : 1),
    );
}
