import { compareIds } from '../by-id.js';
import type { Change } from '../change.js';
import type { Conflict, Plan } from '../model.js';
import type { Planner } from '../planner.js';
import type { PhaseDates } from '../compare-plans.js';
import type { Slot, SlotCount } from '../slot.js';

/** What a change does to one job. */
export interface JobShift {
  readonly jobId: string;
  readonly finishBefore: Slot | null;
  readonly finishAfter: Slot | null;
  /** Slots later; negative when it finishes earlier; null when it has no finish before or after. */
  readonly shift: SlotCount | null;
  readonly dueMissedBefore: boolean;
  readonly dueMissedAfter: boolean;
}

/** A phase that a change puts elsewhere. */
export interface PhaseShift {
  readonly phaseId: string;
  readonly jobId: string;
  /** Null for a phase that the change adds. */
  readonly before: PhaseDates | null;
  readonly after: PhaseDates;
}

/** What would be if something changed, beside what is. */
export interface WhatIf {
  readonly plan: Plan;
  /** Every job, in id order, moved or not. */
  readonly jobs: readonly JobShift[];
  /** Phases that move, in id order. */
  readonly phases: readonly PhaseShift[];
  /** Conflicts that come and go. */
  readonly conflicts: { readonly added: readonly Conflict[]; readonly removed: readonly Conflict[] };
}

/**
 * Plans some changes without making them and says what they do to every job.
 * @throws RangeError when a change names what is not in the plan's input
 */
export function whatIf(planner: Planner, changes: readonly Change[]): WhatIf {
  return shiftsBetween(planner.plan, planner.preview(changes));
}

/** What one plan has otherwise than another; both of the same horizon. */
export function shiftsBetween(before: Plan, after: Plan): WhatIf {
  return {
    plan: after,
    jobs: jobShifts(before, after),
    phases: phaseShifts(before, after),
    conflicts: comeAndGo(before, after),
  };
}

function jobShifts(before: Plan, after: Plan): JobShift[] {
  const was = new Map(before.jobs.map((job) => [job.id, job]));
  return after.jobs.map((job) => {
    const old = was.get(job.id);
    const finishBefore = old?.finish ?? null;
    const missed = (one: typeof old): boolean =>
      one !== undefined && one.due !== null && (one.finish === null || !one.complete || one.finish > one.due);
    return {
      jobId: job.id,
      finishBefore,
      finishAfter: job.finish,
      shift: finishBefore === null || job.finish === null ? null : job.finish - finishBefore,
      dueMissedBefore: missed(old),
      dueMissedAfter: missed(job),
    };
  });
}

function phaseShifts(before: Plan, after: Plan): PhaseShift[] {
  const was = new Map(before.phases.map((phase) => [phase.id, phase]));
  return after.phases
    .flatMap((phase): PhaseShift[] => {
      const old = was.get(phase.id);
      if (old && old.start === phase.start && old.finish === phase.finish && old.crewId === phase.crewId)
        return [];
      return [
        { phaseId: phase.id, jobId: phase.jobId, before: old ? datesOf(old) : null, after: datesOf(phase) },
      ];
    })
    .sort((a, b) => compareIds(a.phaseId, b.phaseId));
}

function datesOf({ start, finish, crewId }: PhaseDates): PhaseDates {
  return { start, finish, crewId };
}

function comeAndGo(before: Plan, after: Plan): WhatIf['conflicts'] {
  const texts = (plan: Plan): Set<string> =>
    new Set(plan.conflicts.map((conflict) => JSON.stringify(conflict)));
  const was = texts(before);
  const is = texts(after);
  return {
    added: after.conflicts.filter((conflict) => !was.has(JSON.stringify(conflict))),
    removed: before.conflicts.filter((conflict) => !is.has(JSON.stringify(conflict))),
  };
}
