import { compareIds } from './by-id.js';
import type { Commitment, Plan } from './model.js';
import type { Slot } from './slot.js';

/** Dates of one phase, before or after. */
export interface PhaseDates {
  readonly start: Slot | null;
  readonly finish: Slot | null;
  readonly crewId: string | null;
}

/** A phase that a plan puts elsewhere than promised. `before` is null for one that nothing was promised about. */
export interface PhaseDifference {
  readonly phaseId: string;
  readonly jobId: string;
  readonly before: PhaseDates | null;
  readonly after: PhaseDates;
}

/** A job whose finish changes. */
export interface JobDifference {
  readonly jobId: string;
  readonly before: Slot | null;
  readonly after: Slot | null;
}

/** What a proposal would change, in id order. */
export interface PlanDifferences {
  readonly phases: readonly PhaseDifference[];
  readonly jobs: readonly JobDifference[];
}

/**
 * Compares a plan with what people were told. Finished phases are history and never differ; a commitment without a crew does not
 * differ by crew.
 *
 * @param commitments by phase id
 */
export function comparePlans(
  plan: Plan,
  commitments: Readonly<Record<string, Commitment | undefined>>,
): PlanDifferences {
  const phases: PhaseDifference[] = [];
  const before = new Map<string, Slot>();
  for (const phase of plan.phases) {
    const promised = Object.hasOwn(commitments, phase.id) ? commitments[phase.id] : undefined;
    const promisedEnd = promised?.finish ?? (phase.state === 'done' ? phase.finish : null);
    if (promisedEnd !== null && promisedEnd !== undefined) {
      before.set(phase.jobId, Math.max(before.get(phase.jobId) ?? -Infinity, promisedEnd) as Slot);
    }
    if (phase.state === 'done') continue;
    const after = { start: phase.start, finish: phase.finish, crewId: phase.crewId };
    const crewMoved = promised?.crewId !== undefined && promised.crewId !== phase.crewId;
    if (promised && promised.start === after.start && promised.finish === after.finish && !crewMoved)
      continue;
    phases.push({
      phaseId: phase.id,
      jobId: phase.jobId,
      before: promised
        ? { start: promised.start, finish: promised.finish, crewId: promised.crewId ?? null }
        : null,
      after,
    });
  }
  const jobs = plan.jobs
    .map((job) => ({ jobId: job.id, before: before.get(job.id) ?? null, after: job.finish }))
    .filter((job) => job.before !== job.after);
  phases.sort((a, b) => compareIds(a.phaseId, b.phaseId));
  return { phases, jobs };
}
