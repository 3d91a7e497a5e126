import { randomInt } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import type { Prisma } from '../../generated/prisma/client.js';
import { WrongState } from '../../phases/phases.face.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { companyRow } from '../../platform/database/company-row.js';
import { demandFound } from '../../platform/outcomes/demand.js';
import { refuseInput } from '../../platform/outcomes/demand-past.js';
import { Refused } from '../../platform/outcomes/refusal.js';
import type { PlanWeightsInput, StartImprovementInput, StopImprovementInput } from './improvement.inputs.js';
import { ImprovementRunning } from './improvement-running.js';

const USUAL_SECONDS = 20;
const MOST_SECONDS = 600;
const MOST_WEIGHT = 1000;
const SEEDS = 2 ** 31;

/** Starts and stops searches for a better plan. The worker does them; the queue carries their ids only. */
@Injectable()
export class ImprovementsService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Asks for a search; a company has one at work at a time. */
  start(ctx: Context, input: StartImprovementInput) {
    return this.changes.run(ctx, { operation: 'startImprovement', input }, async (change) => {
      const { tx, now } = change;
      const seconds = demandWithin('seconds', input.seconds ?? USUAL_SECONDS, 1, MOST_SECONDS);
      const seed = demandWithin('seed', input.seed ?? randomInt(SEEDS), 0, SEEDS - 1);
      const weights = weightsOf(input.weights);
      // The company's lock is held, so nobody else can start one between this look and the row.
      const other = await tx.improvement.findFirst({
        where: { companyId: ctx.companyId, state: { in: ['waiting', 'running'] } },
      });
      if (other) throw new Refused(new ImprovementRunning(other.id));
      const made = await tx.improvement.create({
        data: {
          companyId: ctx.companyId,
          seconds,
          seed,
          ...(weights ? { weights } : {}),
          askedAt: now,
          askedById: ctx.personId || null,
        },
      });
      change.record({
        action: 'better plan asked for',
        subjectType: 'improvement',
        subjectId: made.id,
        detail: { seconds },
      });
      return { improvementId: made.id };
    });
  }

  /** Stops a search. One that no worker has begun ends at once; the worker of another hears of it within a second. */
  stop(ctx: Context, input: StopImprovementInput) {
    return this.changes.run(ctx, { operation: 'stopImprovement', input }, async (change) => {
      const { tx, now } = change;
      const where = companyRow(change, input.improvementId);
      const run = demandFound(await tx.improvement.findFirst({ where }), 'search');
      if (run.state !== 'waiting' && run.state !== 'running')
        throw new Refused(
          new WrongState(run.state, `This search has ended: it is ${run.state}. There is nothing to stop.`),
        );
      const ended = await tx.improvement.updateMany({
        where: { id: run.id, state: 'waiting' },
        data: { state: 'stopped', stop: 'discard', endedAt: now, revision: { increment: 1 } },
      });
      if (ended.count === 0)
        await tx.improvement.updateMany({
          where: { id: run.id, state: 'running' },
          data: { stop: input.how ?? 'keep', revision: { increment: 1 } },
        });
      change.record({ action: 'search stopped', subjectType: 'improvement', subjectId: run.id });
      return { improvementId: run.id };
    });
  }
}

function demandWithin(path: string, value: number, least: number, most: number): number {
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  return refuseInput(path, `must be a whole number from ${least} to ${most}.`);
}

function weightsOf(input: PlanWeightsInput | null | undefined): Prisma.InputJsonObject | null {
  const given = Object.entries(input ?? {}).filter(
    (entry): entry is [string, number] => typeof entry[1] === 'number',
  );
  for (const [name, value] of given)
    if (!Number.isFinite(value) || value < 0 || value > MOST_WEIGHT)
      refuseInput(`weights.${name}`, `must lie between 0 and ${MOST_WEIGHT}.`);
  if (given.length > 0 && given.length === 4 && given.every(([, value]) => value === 0))
    refuseInput(
      'weights',
      'are all 0, so that every plan would be as good as another; let one of them count.',
    );
  return given.length === 0 ? null : Object.fromEntries(given);
}
