import type { Prisma } from '../../generated/prisma/client.js';
import type { PlanningRows } from '../gather/rows.js';
import { readReason } from '../reasons/stored-reason.js';
import type { PlanRows } from '../replan/plan-rows.js';
import type { StoredJobEnd, StoredMove } from '../replan/stored-differences.js';

type Row = PlanRows['phases'][number];

/** Phases without a promise, not begun, that an improved plan has otherwise than the plan in force; in id order. */
export function improvedMoves(rows: PlanningRows, inForce: PlanRows, improved: PlanRows): StoredMove[] {
  const promised = new Set(rows.commitments.map(({ phaseId }) => phaseId));
  const before = byPhase(inForce);
  const after = byPhase(improved);
  return rows.phases
    .filter(({ id, state }) => state === 'waiting' && !promised.has(id))
    .flatMap(({ id, jobId }): StoredMove[] => {
      const [was, is] = [before.get(id), after.get(id)];
      if (key(was) === key(is)) return [];
      const reason = is ? readReason(is.reason as Prisma.JsonValue) : improved.conflicts.unplanned[id];
      return [
        {
          phaseId: id,
          jobId,
          startBefore: iso(was?.startAt),
          startAfter: iso(is?.startAt),
          finishBefore: iso(was?.finishAt),
          finishAfter: iso(is?.finishAt),
          crewBeforeId: was?.crewId ?? null,
          crewAfterId: is?.crewId ?? null,
          reason: reason?.steps[0] ?? null,
        },
      ];
    })
    .sort((a, b) => (a.phaseId < b.phaseId ? -1 : 1));
}

/** Jobs whose last planned finish an improved plan moves; in id order. */
export function improvedEnds(rows: PlanningRows, inForce: PlanRows, improved: PlanRows): StoredJobEnd[] {
  const jobOf = new Map(rows.phases.map(({ id, jobId }) => [id, jobId]));
  const before = ends(inForce, jobOf);
  const after = ends(improved, jobOf);
  return rows.jobs
    .map(({ id }) => ({ jobId: id, before: before.get(id) ?? null, after: after.get(id) ?? null }))
    .filter((one) => one.before !== one.after)
    .sort((a, b) => (a.jobId < b.jobId ? -1 : 1));
}

const byPhase = ({ phases }: PlanRows): Map<string, Row> => new Map(phases.map((row) => [row.phaseId, row]));

function ends({ phases }: PlanRows, jobOf: ReadonlyMap<string, string>): Map<string, string> {
  const last = new Map<string, string>();
  for (const { phaseId, finishAt } of phases) {
    const [jobId, finish] = [jobOf.get(phaseId) ?? '', iso(finishAt) ?? ''];
    if (finish > (last.get(jobId) ?? '')) last.set(jobId, finish);
  }
  return last;
}

const key = (row: Row | undefined): string =>
  row ? JSON.stringify([iso(row.startAt), iso(row.finishAt), row.crewId]) : 'no place';

const iso = (at: Date | string | undefined): string | null =>
  at === undefined ? null : new Date(at).toISOString();
