import type { PlanningRows } from '../gather/rows.js';
import { readReason } from '../reasons/stored-reason.js';
import type { Prisma } from '../../generated/prisma/client.js';
import type { PlanRows } from './plan-rows.js';
import type { StoredDifference, StoredDifferences, StoredJobFinish } from './stored-differences.js';

/**
 * What differs between a plan and the commitments that stand, in id order. The start of a phase that has begun is a fact and no difference;
 * a promise without a crew does not differ by crew.
 */
export function differencesOf(rows: PlanningRows, plan: PlanRows): StoredDifferences {
  const planned = new Map(plan.phases.map((row) => [row.phaseId, row]));
  const phases = new Map(rows.phases.map((row) => [row.id, row]));
  const promised = rows.commitments
    .flatMap((row) => {
      const phase = phases.get(row.phaseId);
      return phase ? [{ row, phase, after: planned.get(row.phaseId) }] : [];
    })
    .sort((a, b) => (a.row.phaseId < b.row.phaseId ? -1 : 1));
  const all = promised.map(({ row, phase, after }): StoredDifference & { readonly moved: boolean } => {
    const startMoved = phase.state === 'waiting' && !same(row.startAt, after?.startAt);
    const crewMoved = row.crewId !== null && row.crewId !== (after?.crewId ?? null);
    const unplanned = plan.conflicts.unplanned[row.phaseId];
    const reason = after ? readReason(after.reason as Prisma.JsonValue) : unplanned;
    return {
      phaseId: row.phaseId,
      jobId: phase.jobId,
      startBefore: row.startAt.toISOString(),
      startAfter: isoOf(after?.startAt),
      finishBefore: row.finishAt.toISOString(),
      finishAfter: isoOf(after?.finishAt),
      crewBeforeId: row.crewId,
      crewAfterId: after?.crewId ?? null,
      reason: reason?.steps[0] ?? null,
      moved: startMoved || crewMoved || !same(row.finishAt, after?.finishAt),
    };
  });
  const moved = all.filter((one) => one.moved).map(({ moved: _, ...difference }) => difference);
  return { phases: moved, jobs: jobFinishes(all) };
}

/** Two sets of differences ask the same of the office when the same phases move to the same times and crews. */
export function sameDifferences(a: StoredDifferences, b: StoredDifferences): boolean {
  const core = ({ phases, moves = [] }: StoredDifferences) =>
    JSON.stringify(
      [...phases, ...moves].map((one) => [
        one.phaseId,
        one.startBefore,
        one.startAfter,
        one.finishBefore,
        one.finishAfter,
        one.crewBeforeId,
        one.crewAfterId,
      ]),
    );
  return core(a) === core(b);
}

function jobFinishes(all: readonly StoredDifference[]): StoredJobFinish[] {
  const byJob = new Map<string, StoredDifference[]>();
  for (const one of all) byJob.set(one.jobId, [...(byJob.get(one.jobId) ?? []), one]);
  return [...byJob]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([jobId, list]) => {
      const [before = ''] = list
        .map(({ finishBefore }) => finishBefore)
        .sort()
        .reverse();
      const after = latest(list.map(({ finishAfter }) => finishAfter));
      return before === after ? [] : [{ jobId, before, after }];
    });
}

/** The latest of some instants; null when one of them is unknown. ISO instants sort as text. */
function latest(instants: readonly (string | null)[]): string | null {
  return instants.reduce((most, one) => (most === null || one === null ? null : one > most ? one : most));
}

const same = (a: Date, b: Date | string | undefined): boolean =>
  b !== undefined && Number(a) === Number(new Date(b));

const isoOf = (at: Date | string | undefined): string | null =>
  at === undefined ? null : new Date(at).toISOString();
