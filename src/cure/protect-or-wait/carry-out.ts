import { type CureBranch, cureBranch } from '../../../shared/cure/compare/cure-branch.js';
import { NO_PROTECTION } from '../../../shared/cure/protection/protection-plan.js';
import { psi } from '../../../shared/units/stress.js';
import { fahrenheit } from '../../../shared/units/temperature.js';
import { epochMs, HOUR_MS } from '../../../shared/units/time.js';
import { type ComputedPlan, computePlan, type PlanningRows } from '../../planning/planning.face.js';
import { sectionOf } from '../outlook/cure-request.js';
import type { SiteAir } from '../outlook/site-air.js';
import { planOf } from '../protection/protection-spec.js';
import { branchRows, type BranchSpec } from './branch-rows.js';
import type { Pour } from './pour.js';

const MINUTE_MS = 60_000;
const DAY_MS = 24 * HOUR_MS;

/** Days on which waiting tries to place it, one after the other. */
const MOST_DAYS = 14;

/** One branch carried through the plan of the whole company. */
export interface CarriedOut {
  readonly spec: BranchSpec;
  readonly computed: ComputedPlan;
  /** When it is placed; null when the plan finds no place for it. */
  readonly placedAt: Date | null;
  readonly cure: CureBranch | null;
}

/** How a pour would go, placed at this moment under the protection of a branch. */
export function cureAt(pour: Pour, branch: 'protect' | 'wait', placedAt: number, air: SiteAir): CureBranch {
  return cureBranch(branch, {
    placement: {
      placedAt: epochMs(placedAt),
      placedTemperature: fahrenheit(pour.placedF),
      mixture: pour.mixture,
      required: psi(pour.requiredPsi),
    },
    section: sectionOf(pour.material, pour.sectionInches),
    plan: branch === 'protect' ? planOf(pour.protection) : NO_PROTECTION,
    readings: [],
    now: epochMs(placedAt),
    air: air.hours,
    assumedAir: air.assumed,
  });
}

/**
 * Carries a branch through the plan: where the plan places it decides how it cures, and how long it cures decides the
 * plan. Waiting looks for the first day from which it does not freeze before 500 psi.
 */
export function carryOut(
  rows: PlanningRows,
  pour: Pour,
  branch: 'protect' | 'wait',
  air: SiteAir,
  now: Date,
): CarriedOut {
  const first = planned(rows, pour, { branch, cureMinutes: null, notBefore: null }, air, now);
  const fair = branch === 'wait' ? fairSpec(first, pour, air) : null;
  const placed = fair ? planned(rows, pour, fair, air, now) : first;
  const release = placed.cure?.prediction.release;
  if (!release || !placed.placedAt) return placed;
  const cureMinutes = Math.ceil((release.at - placed.placedAt.getTime()) / MINUTE_MS);
  return planned(rows, pour, { ...placed.spec, cureMinutes }, air, now);
}

function planned(rows: PlanningRows, pour: Pour, spec: BranchSpec, air: SiteAir, now: Date): CarriedOut {
  const computed = computePlan(branchRows(rows, pour, spec, now), now.getTime());
  const phase = computed.plan.phases.find(({ id }) => id === pour.phase.id);
  const finish = phase?.finish ?? null;
  if (finish === null) return { spec, computed, placedAt: null, cure: null };
  const placedAt = new Date(computed.frame.ms(finish));
  return { spec, computed, placedAt, cure: cureAt(pour, spec.branch, placedAt.getTime(), air) };
}

/** The first later day on which it does not freeze too early; null when the planned one is fair. */
function fairSpec({ spec, placedAt, cure }: CarriedOut, pour: Pour, air: SiteAir): BranchSpec | null {
  if (!placedAt || !cure?.prediction.freezes) return null;
  for (let day = 1; day <= MOST_DAYS; day += 1) {
    const at = placedAt.getTime() + day * DAY_MS;
    const last = day === MOST_DAYS;
    if (last || !cureAt(pour, 'wait', at, air).prediction.freezes)
      return { ...spec, notBefore: new Date(at - pour.phase.durationMinutes * MINUTE_MS) };
  }
  return null;
}
