import type { Phase, PlanInput } from '../model.js';
import { slot, type Slot } from '../slot.js';
import { greatest, inTurn } from './in-turn.js';
import { LeastSpans } from './least-spans.js';

/**
 * Finishes that limited equipment cannot beat, whatever the order: quantity times the least time it is out, against quantity times the clock
 * (the energy relaxation of Baptiste, Le Pape and Nuijten 1999). A phase has its equipment out for at least its own least length; where it comes
 * back with another phase of the same job, for at least the time by which links keep that phase's finish from this one's start.
 *
 * Only unstarted phases without a pin count, as facts may take more than there is and pins may run through closed hours.
 *
 * @param jobIds jobs that finish
 * @param counts whether what a phase holds counts
 * @returns for k = 1, 2 … the earliest slot at which k of the jobs can be finished
 */
export function poolEnergy(
  input: PlanInput,
  jobIds: readonly string[],
  counts: (phase: Phase) => boolean = () => true,
): Slot[] {
  const phases = new Map(input.phases.map((phase) => [phase.id, phase]));
  const spans = new LeastSpans(input);
  const needs = new Map(input.pools.map(({ id }) => [id, new Map(jobIds.map((job) => [job, 0]))]));
  for (const phase of input.phases) {
    if (phase.facts?.actualStart !== undefined || phase.facts?.pinnedStart !== undefined) continue;
    if (!phase.holds || !counts(phase)) continue;
    for (const { poolId, quantity, untilPhaseId } of phase.holds) {
      const perJob = needs.get(poolId)!;
      const before = perJob.get(phase.jobId);
      if (before === undefined) continue;
      const releaser = untilPhaseId === undefined ? phase : phases.get(untilPhaseId)!;
      const out = releaser.jobId === phase.jobId ? spans.toFinish(phase, releaser) : 0;
      perJob.set(phase.jobId, before + quantity * Math.max(spans.of(phase), out));
    }
  }
  const { now, horizon } = input;
  const end = Math.max(now, horizon);
  // Nothing can be held from a pool that has nothing: its phases have no place and keep no job from finishing.
  const turns = input.pools
    .filter(({ quantity }) => quantity > 0)
    .map(({ id, quantity }) =>
      inTurn(needs.get(id)!.values(), (total) => slot(Math.min(now + Math.ceil(total / quantity), end))),
    );
  return greatest(
    jobIds.map(() => now),
    ...turns,
  );
}
