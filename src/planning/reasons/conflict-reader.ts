import { Injectable } from '@nestjs/common';
import { JobReader } from '../../jobs/jobs.face.js';
import type { Context } from '../../platform/context.js';
import { SiteReader } from '../../sites/sites.face.js';
import type { PlanConflict } from '../plan-conflict.model.js';
import { PlanReader } from '../plan-reader.js';
import type { StoredConflict } from '../replan/stored-conflict.js';
import { conflictText } from './conflict-text.js';
import { ReasonReader } from './reason-reader.js';

/** Turns the conflicts of the plan into sentences; names are read in batches. */
@Injectable()
export class ConflictReader {
  constructor(
    private readonly plan: PlanReader,
    private readonly reasons: ReasonReader,
    private readonly jobs: JobReader,
    private readonly sites: SiteReader,
  ) {}

  /** The conflicts of the plan in force. */
  async all(ctx: Context): Promise<PlanConflict[]> {
    const { conflicts } = await this.plan.conflicts(ctx);
    return this.inWords(ctx, conflicts);
  }

  /** Conflicts of any plan of the company. */
  inWords(ctx: Context, conflicts: readonly StoredConflict[]): Promise<PlanConflict[]> {
    return Promise.all(conflicts.map((one) => this.conflict(ctx, one)));
  }

  private async conflict(ctx: Context, conflict: StoredConflict): Promise<PlanConflict> {
    const { phaseId = null, jobId = null } = conflict;
    const job = await this.jobs.byId(ctx, jobId);
    const site = job && (await this.sites.byId(ctx, job.siteId));
    const ids = { ...conflict.cause, ...subjectsOf(conflict) };
    const names = await this.reasons.names(ctx, phaseId ?? '', ids);
    const others = await Promise.all(
      (conflict.phaseIds ?? []).map((id) => this.reasons.phaseName(ctx, id, job?.id)),
    );
    const known = {
      ...names,
      zone: site?.zone ?? names.zone,
      job: job ? `${job.number}, ${job.name}` : '',
      others,
    };
    return { kind: conflict.code, text: conflictText(conflict, known), phaseId, jobId };
  }
}

/** The ids a conflict names itself; its cause may name others of the same kinds only when it names none. */
function subjectsOf({ clearanceId, inspectionId, crewId, poolId }: StoredConflict) {
  return {
    ...(clearanceId ? { clearanceId } : {}),
    ...(inspectionId ? { inspectionId } : {}),
    ...(crewId ? { crewId } : {}),
    ...(poolId ? { poolId } : {}),
  };
}
