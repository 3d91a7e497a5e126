import { Injectable } from '@nestjs/common';
import { applyChanges } from '../../../shared/schedule/change.js';
import type { Slot } from '../../../shared/schedule/slot.js';
import { SLOT_MINUTES } from '../../../shared/schedule/slot.js';
import { shiftsBetween } from '../../../shared/schedule/what-if/what-if.js';
import type { Context } from '../../platform/context.js';
import { type Refusal, Refused } from '../../platform/outcomes/refusal.js';
import { gather } from '../gather/gather.js';
import { CompanyPlanner } from '../input/company-plan.js';
import { ConflictReader } from '../reasons/conflict-reader.js';
import { planKeepingCrews } from '../replan/compute-plan.js';
import { conflictsOfPlan } from '../replan/plan-rows.js';
import { demandSupposable, supposedChanges, supposedRows } from './suppose.js';
import type { WhatIfInput } from './what-if.inputs.js';
import type { Supposed } from './what-if.model.js';

/** Answers what would be if something changed. It reads once, plans twice and writes nothing. */
@Injectable()
export class WhatIfService {
  constructor(
    private readonly planner: CompanyPlanner,
    private readonly conflicts: ConflictReader,
  ) {}

  /** The differences that a supposition makes to every job. */
  async suppose(ctx: Context, input: WhatIfInput): Promise<Supposed | Refusal> {
    const computed = await this.planner.plan(ctx);
    const { rows, frame, plan: before } = computed;
    try {
      demandSupposable(input, rows, frame);
    } catch (error) {
      if (error instanceof Refused) return error.refusal;
      throw error;
    }
    const planned = gather(supposedRows(input, rows), frame);
    const { plan: after } = planKeepingCrews(applyChanges(planned, supposedChanges(input, planned, frame)));
    const { jobs, phases, conflicts } = shiftsBetween(before, after);
    const at = (slot: Slot | null | undefined): Date | null =>
      slot === null || slot === undefined ? null : new Date(frame.ms(slot));
    const crews = new Set(rows.crews.map(({ id }) => id));
    const known = (id: string | null | undefined): string | null => (id && crews.has(id) ? id : null);
    const inWords = (made: typeof before, some: typeof conflicts.added) =>
      this.conflicts.inWords(ctx, conflictsOfPlan({ ...computed, plan: { ...made, conflicts: some } }, rows));
    return {
      jobs: jobs.map((job) => ({
        jobId: job.jobId,
        before: at(job.finishBefore),
        after: at(job.finishAfter),
        laterMinutes: job.shift === null ? null : job.shift * SLOT_MINUTES,
        dueMissedBefore: job.dueMissedBefore,
        dueMissedAfter: job.dueMissedAfter,
      })),
      phases: phases.map((phase) => ({
        phaseId: phase.phaseId,
        startBefore: at(phase.before?.start),
        startAfter: at(phase.after.start),
        finishBefore: at(phase.before?.finish),
        finishAfter: at(phase.after.finish),
        crewBeforeId: phase.before?.crewId ?? null,
        crewAfterId: known(phase.after.crewId),
        byExtraCrew: phase.after.crewId !== null && known(phase.after.crewId) === null,
      })),
      conflictsAdded: await inWords(after, conflicts.added),
      conflictsRemoved: await inWords(before, conflicts.removed),
    };
  }
}
