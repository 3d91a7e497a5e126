import { Injectable } from '@nestjs/common';
import { CrewReader, EquipmentReader } from '../../crews/crews.face.js';
import { InspectionReader } from '../../inspections/inspections.face.js';
import { JobReader, PhaseReader } from '../../jobs/jobs.face.js';
import type { Context } from '../../platform/context.js';
import { SiteReader } from '../../sites/sites.face.js';
import { PlanReader } from '../plan-reader.js';
import type { Reason } from '../reason.model.js';
import { type ReasonNames, reasonText } from './reason-text.js';
import type { StoredStep } from './stored-reason.js';

/** Longer chains than this name nothing that a person would follow. */
const LONGEST_CHAIN = 60;

/** Turns stored reasons into sentences; names are read in batches. */
@Injectable()
export class ReasonReader {
  constructor(
    private readonly plan: PlanReader,
    private readonly phases: PhaseReader,
    private readonly jobs: JobReader,
    private readonly sites: SiteReader,
    private readonly crews: CrewReader,
    private readonly equipment: EquipmentReader,
    private readonly inspections: InspectionReader,
  ) {}

  /** The one reason that binds a phase; null for one the plan does not know. */
  async binding(ctx: Context, phaseId: string): Promise<Reason | null> {
    const reason = (await this.plan.reasons(ctx)).get(phaseId);
    const step = reason?.steps[0];
    return step ? this.reason(ctx, phaseId, step, reason.ties) : null;
  }

  /** The reasons from a phase back to today; empty for one the plan does not know. */
  async chain(ctx: Context, phaseId: string): Promise<Reason[]> {
    const known = await this.plan.reasons(ctx);
    const steps: { owner: string; step: StoredStep; ties: readonly StoredStep[] | undefined }[] = [];
    const seen = new Set<string>();
    let next: string | null = phaseId;
    while (next !== null && !seen.has(next) && steps.length < LONGEST_CHAIN) {
      seen.add(next);
      const owner: string = next;
      const reason = known.get(owner);
      steps.push(
        ...(reason?.steps ?? []).map((step, i) => ({ owner, step, ties: i === 0 ? reason?.ties : [] })),
      );
      next = reason?.next ?? null;
    }
    return Promise.all(steps.map(({ owner, step, ties }) => this.reason(ctx, owner, step, ties)));
  }

  /** One reason of a phase in words, with what binds it at the same instant. */
  async reason(
    ctx: Context,
    phaseId: string,
    step: StoredStep,
    ties: readonly StoredStep[] = [],
  ): Promise<Reason> {
    return {
      alongside: await Promise.all(ties.map((tie) => this.reason(ctx, phaseId, tie))),
      kind: step.kind,
      text: reasonText(step, await this.names(ctx, phaseId, step)),
      at: step.at ? new Date(step.at) : null,
      phaseId: step.phaseId ?? null,
      inspectionId: step.inspectionId ?? null,
      clearanceId: step.clearanceId ?? null,
      crewId: step.crewId ?? null,
      poolId: step.poolId ?? null,
    };
  }

  /** Names for a reason of a phase and everything it refers to. */
  async names(ctx: Context, phaseId: string, step: Partial<StoredStep>): Promise<ReasonNames> {
    const subject = await this.phases.byId(ctx, phaseId);
    const job = await this.jobs.byId(ctx, subject?.jobId ?? null);
    const site = job && (await this.sites.byId(ctx, job.siteId));
    const [crew, pool, clearance, inspection, other, releaser] = await Promise.all([
      this.crews.byId(ctx, step.crewId ?? null),
      step.poolId ? this.equipment.byId(ctx, step.poolId) : null,
      this.jobs.clearanceById(ctx, step.clearanceId ?? null),
      this.inspections.byId(ctx, step.inspectionId ?? null),
      this.phaseName(ctx, step.phaseId, subject?.jobId),
      this.phaseName(ctx, step.releasedBy, subject?.jobId),
    ]);
    return {
      subject: subject?.name ?? 'It',
      zone: site?.zone ?? 'UTC',
      phase: (id) => (id && id === step.releasedBy && id !== step.phaseId ? releaser : other),
      crew: () => crew?.name ?? 'a crew',
      pool: () => pool?.name ?? 'equipment',
      clearance: () => clearance?.title ?? 'a clearance',
      inspection: () => inspection?.title ?? 'inspection',
    };
  }

  /** Name of a phase; with its job when that is another one. */
  async phaseName(ctx: Context, id: string | null | undefined, jobId: string | undefined): Promise<string> {
    const phase = await this.phases.byId(ctx, id ?? null);
    if (!phase) return 'another phase';
    if (phase.jobId === jobId) return phase.name;
    const job = await this.jobs.byId(ctx, phase.jobId);
    return job ? `${phase.name} (job ${job.number}, ${job.name})` : phase.name;
  }
}
