import { Injectable } from '@nestjs/common';
import { protectionOff } from '../../../shared/cure/alarms/protection-may-come-off.js';
import { predictCure } from '../../../shared/cure/prediction/predict-cure.js';
import { epochMs } from '../../../shared/units/time.js';
import type { Prisma } from '../../generated/prisma/client.js';
import { findingOf } from '../../inspections/inspections.face.js';
import { WrongState } from '../../phases/phases.face.js';
import type { Change } from '../../platform/change/change.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { companyRow } from '../../platform/database/company-row.js';
import { localTime } from '../../platform/local-time.js';
import { demandFound, demandRevision } from '../../platform/outcomes/demand.js';
import { demandPast, refuseInput } from '../../platform/outcomes/demand-past.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { type Refusal, Refused } from '../../platform/outcomes/refusal.js';
import { cureRequestOf } from '../outlook/cure-request.js';
import { siteAir } from '../outlook/site-air.js';
import type { PlacementChanged } from '../placement.outcomes.js';
import { protectionSpecOf } from '../stored-placement.js';
import {
  type ChangeProtectionInput,
  changeProtectionSchema,
  type TakeProtectionOffInput,
  takeOffSchema,
} from './change-protection.inputs.js';
import { ProtectionMustStay } from './protection-must-stay.js';
import { BARE, isBare, kindsOf, protectionWords } from './protection-spec.js';

type Answer = Promise<PlacementChanged | Refusal>;

const WHOLE = {
  readings: { orderBy: { at: 'asc' } },
  phase: { select: { name: true } },
  job: { select: { siteId: true, site: { select: { zone: true } } } },
} satisfies Prisma.PlacementInclude;

type Row = Prisma.PlacementGetPayload<{ include: typeof WHOLE }>;

/** Changes how placements are kept warm, and takes their protection off. */
@Injectable()
export class ProtectionService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Puts more, less or another protection on, from now on. */
  change(ctx: Context, input: ChangeProtectionInput): Answer {
    return this.changes.run(ctx, { operation: 'changeProtection', input }, async (change) => {
      const { protectionPlan } = parseInput(changeProtectionSchema, input);
      const row = await demandPlacement(change, input);
      if (isBare(protectionPlan))
        refuseInput('protectionPlan', 'keeps nothing on; record with "takeProtectionOff" that it came off.');
      await change.tx.placement.update({
        where: { id: row.id },
        data: {
          protection: kindsOf(protectionPlan),
          protectionPlan: protectionPlan as unknown as Prisma.InputJsonObject,
          protectionOffAt: null,
          protectionOffReason: null,
          revision: { increment: 1 },
        },
      });
      tell(change, row, 'protection changed', protectionWords(protectionPlan), null);
      return { placementId: row.id };
    });
  }

  /** Takes it off when the rules say that it may, or when the office says why all the same. Its equipment is free then. */
  takeOff(ctx: Context, input: TakeProtectionOffInput): Answer {
    return this.changes.run(ctx, { operation: 'takeProtectionOff', input }, async (change) => {
      const { at, reason } = parseInput(takeOffSchema, input);
      const row = await demandPlacement(change, input);
      const spec = protectionSpecOf(row);
      if (row.protectionOffAt || isBare(spec))
        throw new Refused(
          new WrongState('off', `Nothing is on ${row.phase.name}; there is nothing to take off.`),
        );
      const offAt = demandPast(change, at);
      if (offAt < row.placedAt)
        refuseInput('at', `It was placed only at ${localTime(row.placedAt, row.job.site.zone)}.`);
      await demandMayComeOff(change, row, offAt, reason ?? null);
      await change.tx.placement.update({
        where: { id: row.id },
        data: { protectionOffAt: offAt, protectionOffReason: reason ?? null, revision: { increment: 1 } },
      });
      await freeEquipment(change, row.phaseId, kindsOf(spec));
      tell(change, row, 'protection taken off', protectionWords(BARE), reason ?? null);
      return { placementId: row.id };
    });
  }
}

async function demandPlacement(
  change: Change,
  input: { readonly placementId: string; readonly revision?: number | null },
): Promise<Row> {
  const found = await change.tx.placement.findFirst({
    where: companyRow(change, input.placementId),
    include: WHOLE,
  });
  const row = demandFound(found, 'placement');
  demandRevision(row, input.revision, 'placement');
  return row;
}

/** @throws Refused with ProtectionMustStay, unless the rules agree or the office gives a reason. */
async function demandMayComeOff(change: Change, row: Row, at: Date, reason: string | null): Promise<void> {
  const { companyId, role } = change.ctx;
  const air = (await siteAir(change.tx, companyId, [row.job.siteId], at))(row.job.siteId);
  const request = cureRequestOf(row, at, air);
  const finding = protectionOff({ request, prediction: predictCure(request), now: epochMs(at.getTime()) });
  if (!finding || finding.ok || (reason !== null && role === 'office')) return;
  throw new Refused(new ProtectionMustStay(findingOf(finding)));
}

/** What lay on the placement goes back to the stock: its holds end with the phase that took them. */
async function freeEquipment(change: Change, phaseId: string, kinds: readonly string[]): Promise<void> {
  await change.tx.equipmentHold.updateMany({
    where: { companyId: change.ctx.companyId, fromPhaseId: phaseId, pool: { kind: { in: [...kinds] } } },
    data: { untilPhaseId: phaseId },
  });
}

function tell(change: Change, row: Row, action: string, text: string, reason: string | null): void {
  change.record({
    action,
    subjectType: 'placement',
    subjectId: row.id,
    jobId: row.jobId,
    detail: { phase: row.phase.name, protection: text },
    reason,
  });
}
