import { Injectable } from '@nestjs/common';
import { DEFAULT_MIXTURES } from '../../shared/cure/mixture.js';
import type { HoldPointItem } from '../../shared/entry/hold-points/item.js';
import type { Phase, Placement, Prisma } from '../generated/prisma/client.js';
import { WrongState } from '../phases/phases.face.js';
import type { Change } from '../platform/change/change.js';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { companyRow } from '../platform/database/company-row.js';
import { demandFound, demandRevision } from '../platform/outcomes/demand.js';
import { demandPast, refuseInput } from '../platform/outcomes/demand-past.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import { type Refusal, Refused } from '../platform/outcomes/refusal.js';
import { expectedAir } from './expected-air.js';
import {
  placementSchema,
  type RecordPlacementInput,
  type RecordTemperatureInput,
  temperatureSchema,
} from './placement.inputs.js';
import type { PlacementChanged } from './placement.outcomes.js';
import { predictedReleaseOf } from './predicted-cure.js';

type Answer = Promise<PlacementChanged | Refusal>;

/** Records what is placed and how warm it stays. */
@Injectable()
export class PlacementsService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Records a placement of a phase that has started. */
  recordPlacement(ctx: Context, input: RecordPlacementInput): Answer {
    return this.changes.run(ctx, { operation: 'recordPlacement', input }, async (change) => {
      const { material, accelerated, protection, ...given } = parseInput(placementSchema, input);
      const phase = await demandPlacingPhase(change, input);
      const placedAt = demandPast(change, given.placedAt, 'placedAt');
      if (phase.actualStart && placedAt < phase.actualStart)
        refuseInput('placedAt', `${phase.name} started only at ${phase.actualStart.toISOString()}.`);
      const requiredPsi = given.requiredPsi ?? (await strengthAsked(change, phase));
      const placement = await change.tx.placement.create({
        data: {
          companyId: ctx.companyId,
          jobId: phase.jobId,
          phaseId: phase.id,
          placedAt,
          material,
          sectionInches: given.sectionInches,
          placedTempF: given.placedTempF,
          mixture: { ...DEFAULT_MIXTURES[material], accelerated } as unknown as Prisma.InputJsonObject,
          protection,
          requiredPsi,
        },
      });
      await predict(change, placement.id);
      change.record({
        action: 'placement recorded',
        subjectType: 'placement',
        subjectId: placement.id,
        jobId: phase.jobId,
        detail: { phase: phase.name, material, placedTempF: given.placedTempF, requiredPsi },
      });
      return { placementId: placement.id };
    });
  }

  /** Records a temperature; the predicted date moves with it. */
  recordTemperature(ctx: Context, input: RecordTemperatureInput): Answer {
    return this.changes.run(ctx, { operation: 'recordTemperature', input }, async (change) => {
      const { concreteF, airF } = parseInput(temperatureSchema, input);
      const placement = demandFound(
        await change.tx.placement.findFirst({ where: companyRow(change, input.placementId) }),
        'placement',
      );
      demandRevision(placement, input.revision, 'placement');
      const at = demandReadingTime(placement, demandPast(change, input.at));
      const before = await change.tx.temperatureReading.findUnique({
        where: { placementId_at: { placementId: placement.id, at } },
      });
      if (before)
        refuseInput(
          'at',
          `${before.concreteF} °F is recorded for ${at.toISOString()} already; enter another time.`,
        );
      await change.tx.temperatureReading.create({
        data: {
          companyId: ctx.companyId,
          placementId: placement.id,
          at,
          concreteF,
          airF: airF ?? null,
          byId: ctx.personId,
        },
      });
      await predict(change, placement.id);
      change.record({
        action: 'temperature read',
        subjectType: 'placement',
        subjectId: placement.id,
        jobId: placement.jobId,
        detail: { at: at.toISOString(), concreteF, airF: airF ?? null },
      });
      return { placementId: placement.id };
    });
  }
}

async function demandPlacingPhase(change: Change, input: RecordPlacementInput): Promise<Phase> {
  const found = await change.tx.phase.findFirst({ where: companyRow(change, input.phaseId) });
  const phase = demandFound(found, 'phase');
  demandRevision(phase, input.revision, 'phase');
  if (phase.state !== 'started' && phase.state !== 'done')
    throw new Refused(
      new WrongState(
        phase.state,
        `${phase.name} has not started; start it before you record what it placed.`,
      ),
    );
  return phase;
}

/** The strength that the cure hold points of what this phase places ask for. */
async function strengthAsked(change: Change, phase: Phase): Promise<number> {
  const points = await change.tx.holdPoint.findMany({
    where: { companyId: change.ctx.companyId, placementPhaseId: phase.id, kind: 'cure' },
    select: { items: true },
  });
  const asked = points
    .flatMap(({ items }) => items as unknown as HoldPointItem[])
    .filter(({ unit }) => unit === 'psi');
  return Math.max(0, ...asked.map(({ limit }) => limit.atLeast ?? 0));
}

function demandReadingTime(placement: Placement, at: Date): Date {
  if (at < placement.placedAt)
    refuseInput('at', `It was placed only at ${placement.placedAt.toISOString()}; enter a later time.`);
  return at;
}

/** Computes the predicted date anew from everything read so far. */
async function predict(change: Change, placementId: string): Promise<void> {
  const row = await change.tx.placement.findUniqueOrThrow({
    where: { id: placementId },
    include: { readings: { orderBy: { at: 'asc' } }, job: { select: { siteId: true } } },
  });
  const { siteId } = row.job;
  const air = await expectedAir(change.tx, change.ctx.companyId, [siteId], change.now);
  const { releaseAt } = predictedReleaseOf(row, change.now, air(siteId));
  await change.tx.placement.update({
    where: { id: placementId },
    data: {
      predictedReleaseAt: releaseAt === null ? null : new Date(releaseAt),
      revision: { increment: 1 },
    },
  });
}
