import type { PlannedPhase, Prisma } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { fingerprint } from '../../platform/change/fingerprint.js';
import type { PlanningRows } from '../gather/rows.js';
import type { ComputedPlan } from './compute-plan.js';
import type { PlanRows } from './plan-rows.js';

/** The number of the plan in force, and the phases whose dates or crew it moved. */
export interface WrittenPlan {
  readonly planNumber: number;
  readonly moved: ReadonlySet<string>;
}

/** Writes what differs from the plan in force, under the next number. A plan that is equal to it writes nothing. */
export async function writePlan(
  change: Change,
  rows: PlanningRows,
  next: PlanRows,
  { input, plan }: ComputedPlan,
): Promise<WrittenPlan> {
  const { tx, ctx, now } = change;
  const { companyId } = ctx;
  const before = new Map(rows.planned.map((row) => [row.phaseId, row]));
  const phases = next.phases.filter((row) => differs(row, before.get(row.phaseId)));
  const visitsBefore = new Map(rows.visits.map((row) => [row.inspectionId, row]));
  const visits = next.visits.filter((row) => differs(row, visitsBefore.get(row.inspectionId)));
  const goneVisits = gone(
    visitsBefore.keys(),
    next.visits.map(({ inspectionId }) => inspectionId),
  );
  const gonePhases = gone(
    before.keys(),
    next.phases.map(({ phaseId }) => phaseId),
  );
  const left = await tx.plannedPhase.deleteMany({
    where: { companyId, phase: { OR: [{ state: 'dropped' }, { job: { state: 'cancelled' } }] } },
  });
  const { planNumber } = rows.company;
  const same =
    phases.length + visits.length + goneVisits.length + gonePhases.length + left.count === 0 &&
    !(await conflictsDiffer(change, planNumber, next));
  if (same) return { planNumber, moved: new Set() };

  const number = planNumber + 1;
  const phaseIds = [...gonePhases, ...phases.map(({ phaseId }) => phaseId)];
  const visitIds = [...goneVisits, ...visits.map(({ inspectionId }) => inspectionId)];
  await tx.plannedPhase.deleteMany({ where: { companyId, phaseId: { in: phaseIds } } });
  await tx.plannedPhase.createMany({
    data: phases.map((row) => ({ ...row, companyId, planNumber: number })),
  });
  await tx.plannedVisit.deleteMany({ where: { companyId, inspectionId: { in: visitIds } } });
  await tx.plannedVisit.createMany({
    data: visits.map((row) => ({ ...row, companyId, planNumber: number })),
  });
  await tx.company.update({ where: { id: companyId }, data: { planNumber: number } });
  await tx.plan.create({
    data: {
      companyId,
      number,
      computedAt: now,
      cause: causeOf(change),
      inputHash: fingerprint(input),
      outputHash: fingerprint(plan),
      conflicts: next.conflicts as unknown as Prisma.InputJsonObject,
    },
  });
  const moved = phases.filter((row) => isMoved(row, before.get(row.phaseId))).map(({ phaseId }) => phaseId);
  return { planNumber: number, moved: new Set([...gonePhases, ...moved]) };
}

/** What brought a plan about: the actions of the change, each once. */
export function causeOf({ lines }: Change): string {
  return [...new Set(lines.map(({ action }) => action))].slice(0, 3).join('; ') || 'time passed';
}

function differs(row: object, before: object | undefined): boolean {
  if (!before) return true;
  const { companyId: _c, planNumber: _n, ...rest } = before as Record<string, unknown>;
  return dates(row) !== dates(rest);
}

function isMoved(row: PlanRows['phases'][number], before: PlannedPhase | undefined): boolean {
  return (
    !before ||
    Number(before.startAt) !== Number(row.startAt) ||
    Number(before.finishAt) !== Number(row.finishAt) ||
    before.crewId !== row.crewId
  );
}

function gone(before: Iterable<string>, after: readonly string[]): string[] {
  const still = new Set(after);
  return [...before].filter((id) => !still.has(id));
}

async function conflictsDiffer({ tx, ctx }: Change, number: number, next: PlanRows): Promise<boolean> {
  const row = await tx.plan.findUnique({ where: { companyId_number: { companyId: ctx.companyId, number } } });
  if (!row) return next.conflicts.conflicts.length > 0;
  return dates(row.conflicts) !== dates(next.conflicts);
}

/**
 * Everything but the rules by which others go first: a plan made again names "it stood before" where priority had put it first, and is
 * the same plan. What was said first stays.
 */
function dates(value: unknown): string {
  return fingerprint(
    JSON.parse(JSON.stringify(value, (key, inner: unknown) => (key === 'ahead' ? undefined : inner))),
  );
}
