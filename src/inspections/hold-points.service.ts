import { Injectable } from '@nestjs/common';
import type { HoldPointState, Prisma } from '../generated/prisma/client.js';
import type { Change } from '../platform/change/change.js';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { CodedError } from '../platform/graphql/coded-error.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import { type Refusal, Refused } from '../platform/outcomes/refusal.js';
import { WrongState } from '../phases/phases.face.js';
import { LimitExceeded } from './errors/limit-exceeded.js';
import { NotWaivable } from './errors/not-waivable.js';
import {
  type RefuseHoldPointInput,
  refuseSchema,
  type ReleaseHoldPointInput,
  releaseSchema,
  type WaiveHoldPointInput,
  waiveSchema,
} from './hold-point.inputs.js';
import type { HoldPointChanged } from './hold-point.outcomes.js';
import { type Judged, judgeValues } from './judge-values.js';
import { demandKind } from './release/demand-kind.js';
import { demandHoldPoint, gateIsPassed, type GatedHoldPoint } from './release/hold-point-with-gate.js';
import { itemsOf } from './stored-items.js';

/** What was decided at a hold point. */
interface Decision {
  readonly state: HoldPointState;
  readonly action: string;
  readonly reason: string | null;
  readonly judged?: Judged;
}

/** Decides hold points. A refused one can be released later; a passed gate cannot be closed again. */
@Injectable()
export class HoldPointsService {
  constructor(private readonly changes: ChangeRunner) {}

  /** Releases a hold point on measured values within all limits and on what its kind asks for. */
  release(ctx: Context, input: ReleaseHoldPointInput): Promise<HoldPointChanged | Refusal> {
    return this.changes.run(ctx, { operation: 'releaseHoldPoint', input }, async (change) => {
      parseInput(releaseSchema, input);
      const point = await demandHoldPoint(change, input);
      demandUndecided(point);
      const found = await demandKind(change, point);
      const values = judgeValues(psiAside(point), input.values);
      if (!values.ok) throw new Refused(new LimitExceeded(values.findings));
      const judged = { ...values, findings: [...values.findings, ...found] };
      const reason = input.note?.trim() || null;
      return decide(change, point, { state: 'released', action: 'hold point released', reason, judged });
    });
  }

  /** Refuses a hold point with what is wrong; allowed until its gate is passed, after a release too. */
  refuse(ctx: Context, input: RefuseHoldPointInput): Promise<HoldPointChanged | Refusal> {
    return this.changes.run(ctx, { operation: 'refuseHoldPoint', input }, async (change) => {
      const { reason } = parseInput(refuseSchema, input);
      const point = await demandHoldPoint(change, input);
      if (point.kind === 'inspection' || point.kind === 'reading') {
        const how =
          point.kind === 'inspection' ? 'the result of the inspection' : 'the reading as it was taken';
        throw new Refused(
          new WrongState(point.state, `${point.title} is not refused by hand: record ${how}.`),
        );
      }
      if (point.state !== 'open' && point.state !== 'refused' && gateIsPassed(point)) {
        const message = `${point.phase.name} has passed this gate; put the phase back first.`;
        throw new Refused(new WrongState(point.state, message));
      }
      const judged = judgeValues(itemsOf(point), input.values);
      return decide(change, point, { state: 'refused', action: 'hold point refused', reason, judged });
    });
  }

  /** Waives a hold point by name and reason: the office, or for a cure also the foreman. */
  waive(ctx: Context, input: WaiveHoldPointInput): Promise<HoldPointChanged | Refusal> {
    return this.changes.run(ctx, { operation: 'waiveHoldPoint', input }, async (change) => {
      const { reason } = parseInput(waiveSchema, input);
      const point = await demandHoldPoint(change, input);
      if (ctx.role !== 'office' && point.kind !== 'cure')
        throw new CodedError(
          'not-allowed',
          'This needs the role office; a foreman decides only about a cure.',
        );
      if (point.kind === 'inspection' || point.kind === 'reading' || !point.waivable) {
        const message = `${point.title} can never be waived. ${NEVER[point.kind] ?? 'Measure and release it.'}`;
        throw new Refused(new NotWaivable(message));
      }
      demandUndecided(point);
      return decide(change, point, { state: 'waived', action: 'hold point waived', reason });
    });
  }
}

const NEVER: Partial<Record<GatedHoldPoint['kind'], string>> = {
  inspection: 'The authority must pass it.',
  reading: 'An accepted reading must stand.',
};

/** A strength is computed from temperatures, not typed in; the other items of a cure are measured as usual. */
function psiAside(point: GatedHoldPoint) {
  return itemsOf(point).filter(({ unit }) => point.kind !== 'cure' || unit !== 'psi');
}

function demandUndecided(point: GatedHoldPoint): void {
  if (point.state === 'open' || point.state === 'refused') return;
  const message = `${point.title} is ${point.state} already; nothing more is needed here.`;
  throw new Refused(new WrongState(point.state, message));
}

async function decide(
  change: Change,
  point: GatedHoldPoint,
  decision: Decision,
): Promise<{ holdPointId: string }> {
  const { state, action, reason, judged } = decision;
  await change.tx.holdPoint.update({
    where: { id: point.id },
    data: {
      state,
      reason,
      decidedById: change.ctx.personId,
      decidedAt: change.now,
      ...(judged && { measured: json(judged.measured), findings: json(judged.findings) }),
      revision: { increment: 1 },
    },
  });
  change.record({
    action,
    subjectType: 'holdPoint',
    subjectId: point.id,
    jobId: point.jobId,
    detail: {
      title: point.title,
      phase: point.phase.name,
      ...(judged && { measured: json(judged.measured) }),
    },
    reason,
  });
  return { holdPointId: point.id };
}

const json = (value: unknown): Prisma.InputJsonValue => value as Prisma.InputJsonValue;
