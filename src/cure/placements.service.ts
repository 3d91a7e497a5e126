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
import { localTime } from '../platform/local-time.js';
import { kindsOf, type ProtectionSpec } from './protection/protection-spec.js';
import {
  placementSchema,
  type RecordPlacementInput,
  type RecordTemperatureInput,
  temperatureSchema,
} from './placement.inputs.js';
import type { PlacementChanged } from './placement.outcomes.js';

type Answer = Promise<PlacementChanged | Refusal>;

/** Records what is placed and how warm it stays. */
@Injectable()
export class PlacementsService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Records a placement of a phase that has started. */
  recordPlacement(ctx: Context, input: RecordPlacementInput): Answer {
    return this.changes.run(ctx, { operation: 'recordPlacement', input }, async (change) => {
      const { material, accelerated, protection, protectionPlan, ...given } = parseInput(
        placementSchema,
        input,
      );
      const phase = await demandPlacingPhase(change, input);
      const placedAt = demandPast(change, given.placedAt, 'placedAt');
      const { zone } = phase.job.site;
      if (phase.actualStart && placedAt < phase.actualStart)
        refuseInput('placedAt', `${phase.name} started only at ${localTime(phase.actualStart, zone)}.`);
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
          protection: protectionPlan ? kindsOf(protectionPlan) : protection,
          ...(protectionPlan ? { protectionPlan: stored(protectionPlan) } : {}),
          requiredPsi,
        },
      });
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

  /** Records a temperature; the watch moves the predicted date with it. */
  recordTemperature(ctx: Context, input: RecordTemperatureInput): Answer {
    return this.changes.run(ctx, { operation: 'recordTemperature', input }, async (change) => {
      const { concreteF, airF } = parseInput(temperatureSchema, input);
      const placement = demandFound(
        await change.tx.placement.findFirst({
          where: companyRow(change, input.placementId),
          include: AT_SITE,
        }),
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
          `${before.concreteF} °F is recorded for ${localTime(at, placement.job.site.zone)} already; enter another time.`,
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
      await change.tx.placement.update({
        where: { id: placement.id },
        data: { revision: { increment: 1 } },
      });
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

const AT_SITE = { job: { select: { site: { select: { zone: true } } } } } as const;

/** A row with the zone of its site, in which people are told times. */
type AtSite<T> = T & { readonly job: { readonly site: { readonly zone: string } } };

const stored = (spec: ProtectionSpec) => spec as unknown as Prisma.InputJsonObject;

async function demandPlacingPhase(change: Change, input: RecordPlacementInput): Promise<AtSite<Phase>> {
  const found = await change.tx.phase.findFirst({
    where: companyRow(change, input.phaseId),
    include: AT_SITE,
  });
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

function demandReadingTime({ placedAt, job }: AtSite<Placement>, at: Date): Date {
  if (at < placedAt)
    refuseInput('at', `It was placed only at ${localTime(placedAt, job.site.zone)}; enter a later time.`);
  return at;
}
