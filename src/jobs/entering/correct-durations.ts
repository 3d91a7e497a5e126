import { changedMinutes } from '../../../shared/entry/expand/changed-minutes.js';
import type { EntryMeasurement } from '../../../shared/entry/measurement/measurement.js';
import type { Job } from '../../generated/prisma/client.js';
import type { Change } from '../../platform/change/change.js';
import { templateOfJob } from '../templates/template-for-job.js';

/** What a correction did to durations, as the journal tells it. */
export interface CorrectedDurations {
  /** Phases with minutes before and after. */
  readonly durations: { readonly phase: string; readonly before: number; readonly after: number }[];
  /** Phases that have begun: of these the crew tells what is left. */
  readonly keptUnderWay: string[];
}

/**
 * Gives the phases whose quantities changed the minutes that follow from them, by the template of the job as it stands. What is
 * waiting is planned anew with them; what has begun keeps its own, and the crew tells what is left of it.
 */
export async function correctDurations(
  change: Change,
  job: Job,
  before: EntryMeasurement,
  after: EntryMeasurement,
): Promise<CorrectedDurations> {
  const changed = changedMinutes(await templateOfJob(change, job.templateId), before, after);
  const phases = await change.tx.phase.findMany({
    where: { jobId: job.id, origin: 'template', key: { in: changed.map(({ key }) => key) } },
    orderBy: { position: 'asc' },
  });
  const durations: CorrectedDurations['durations'] = [];
  const keptUnderWay: string[] = [];
  for (const phase of phases) {
    const minutes = changed.find(({ key }) => key === phase.key)?.after ?? phase.durationMinutes;
    if (phase.state === 'started') keptUnderWay.push(phase.name);
    if (phase.state !== 'waiting' || minutes === phase.durationMinutes) continue;
    await change.tx.phase.update({
      where: { id: phase.id },
      data: { durationMinutes: minutes, revision: { increment: 1 } },
    });
    durations.push({ phase: phase.name, before: phase.durationMinutes, after: minutes });
  }
  return { durations, keptUnderWay };
}
