import { Injectable } from '@nestjs/common';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { CodedError } from '../platform/graphql/coded-error.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import { type Refusal, Refused } from '../platform/outcomes/refusal.js';
import { WrongState } from '../phases/phases.face.js';
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
import { decide, refusePoint, releasePoint } from './release/decide.js';
import { demandHoldPoint, type GatedHoldPoint } from './release/hold-point-with-gate.js';

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
      return releasePoint(change, point, { values: input.values, remark: input.note?.trim() || null });
    });
  }

  /** Refuses a hold point with what is wrong; allowed until its gate is passed, after a release too. */
  refuse(ctx: Context, input: RefuseHoldPointInput): Promise<HoldPointChanged | Refusal> {
    return this.changes.run(ctx, { operation: 'refuseHoldPoint', input }, async (change) => {
      const { reason } = parseInput(refuseSchema, input);
      const point = await demandHoldPoint(change, input);
      return refusePoint(change, point, { values: input.values, remark: reason });
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

function demandUndecided(point: GatedHoldPoint): void {
  if (point.state === 'open' || point.state === 'refused') return;
  const message = `${point.title} is ${point.state} already; nothing more is needed here.`;
  throw new Refused(new WrongState(point.state, message));
}
