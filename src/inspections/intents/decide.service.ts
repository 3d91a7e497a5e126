import { Injectable } from '@nestjs/common';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { type DecideHoldPointInput, decideSchema } from './decide.inputs.js';
import { decideHoldPoint } from './decide-hold-point.js';

/** Settles decisions on hold points by people who may have been out of reach for weeks. */
@Injectable()
export class DecideService {
  constructor(private readonly changes: ChangeRunner) {}

  decide(ctx: Context, input: DecideHoldPointInput) {
    return this.changes.run(ctx, { operation: 'decideHoldPoint', input }, (change) => {
      const { remark } = parseInput(decideSchema, input);
      return decideHoldPoint(change, { ...input, remark });
    });
  }
}
