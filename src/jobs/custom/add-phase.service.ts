import { Injectable } from '@nestjs/common';
import { DEFAULT_LIMIT_SETS } from '../../../shared/weather/default-limit-sets.js';
import type { Job, Phase } from '../../generated/prisma/client.js';
import { WrongState } from '../../phases/phases.face.js';
import type { Change } from '../../platform/change/change.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound } from '../../platform/outcomes/demand.js';
import { InvalidInput, type InputFault } from '../../platform/outcomes/invalid-input.js';
import { NotFound } from '../../platform/outcomes/not-found.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import { rowIds } from '../../platform/row-id.js';
import { demandJob, demandLive } from '../demand-job.js';
import type { AddPhaseInput } from './custom.inputs.js';
import { demandNoCycle } from './demand-no-cycle.js';
import { customPhase } from './phase-schema.js';

/** Adds phases that the template does not have. */
@Injectable()
export class AddPhaseService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Adds a phase between those it comes after and those it comes before, with finish-start links. */
  add(ctx: Context, input: AddPhaseInput) {
    return this.changes.run(ctx, { operation: 'addPhase', input }, async (change) => {
      const { tx } = change;
      const job = await demandJob(change, input.jobId);
      demandLive(job);
      const data = parseInput(customPhase, input);
      const area = input.areaId
        ? demandFound(
            await tx.area.findFirst({ where: { ...companyRow(change, input.areaId), jobId: job.id } }),
            'area',
          )
        : null;
      const after = await demandPhases(change, job, input.after ?? []);
      const before = await demandPhases(change, job, input.before ?? []);
      await demandFits(change, job, data);
      demandWaiting(before);
      const position = Math.max(-1, ...after.map((phase) => phase.position)) + 1;
      await tx.phase.updateMany({
        where: { jobId: job.id, position: { gte: position } },
        data: { position: { increment: 1 } },
      });
      const phase = await tx.phase.create({
        data: {
          companyId: ctx.companyId,
          jobId: job.id,
          areaId: area?.id ?? null,
          ...data,
          position,
          origin: 'custom',
        },
      });
      await demandNoCycle(change, job.id, ids(after), ids(before), phase);
      const own = { companyId: ctx.companyId, jobId: job.id, kind: 'finishStart', origin: 'custom' } as const;
      await tx.link.createMany({
        data: [
          ...ids(after).map((fromId) => ({ ...own, fromId, toId: phase.id })),
          ...ids(before).map((toId) => ({ ...own, fromId: phase.id, toId })),
        ],
      });
      change.record({
        action: 'phase added',
        subjectType: 'phase',
        subjectId: phase.id,
        jobId: job.id,
        detail: { key: phase.key, name: phase.name, after: ids(after), before: ids(before) },
      });
      return { phaseId: phase.id };
    });
  }
}

const ids = (phases: readonly Phase[]): string[] => phases.map(({ id }) => id);

/** Phases of the job by their ids. @throws Refused with NotFound when one is missing, dropped or of another job. */
async function demandPhases({ ctx, tx }: Change, job: Job, wanted: readonly string[]): Promise<Phase[]> {
  const distinct = [...new Set(wanted)];
  const rows = await tx.phase.findMany({
    where: {
      companyId: ctx.companyId,
      jobId: job.id,
      id: { in: rowIds(distinct) },
      state: { not: 'dropped' },
    },
    orderBy: { position: 'asc' },
  });
  if (rows.length !== distinct.length) throw new Refused(new NotFound('phase of this job'));
  return rows;
}

/** @throws Refused with InvalidInput when the key is taken or the weather limits are unknown. */
async function demandFits(
  { ctx, tx }: Change,
  job: Job,
  { key, weatherLimitKey }: { key: string; weatherLimitKey: string | null },
): Promise<void> {
  const faults: InputFault[] = [];
  if (await tx.phase.findFirst({ where: { jobId: job.id, key } })) {
    faults.push({
      path: 'key',
      message: `There is a phase "${key}" in this job already; choose another key.`,
    });
  }
  if (weatherLimitKey !== null) {
    const own = await tx.weatherLimitSet.findMany({
      where: { companyId: ctx.companyId },
      select: { key: true },
    });
    const known = new Set([...own, ...DEFAULT_LIMIT_SETS].map((set) => set.key));
    if (!known.has(weatherLimitKey)) {
      const message = `There are no weather limits "${weatherLimitKey}"; known are ${[...known].sort().join(', ')}.`;
      faults.push({ path: 'weatherLimitKey', message });
    }
  }
  if (faults.length > 0) throw new Refused(new InvalidInput(faults));
}

/** @throws Refused with WrongState when a phase that is to wait for the new one has started. */
function demandWaiting(phases: readonly Phase[]): void {
  const started = phases.find(({ state }) => state !== 'waiting');
  if (!started) return;
  throw new Refused(
    new WrongState(
      started.state,
      `${started.name} is ${started.state} and cannot wait for a new phase; choose a later one.`,
    ),
  );
}
