import { Injectable } from '@nestjs/common';
import { ChangeRunner } from '../platform/change/change-runner.js';
import type { Context } from '../platform/context.js';
import { parseInput } from '../platform/outcomes/parse-input.js';
import type { Refusal } from '../platform/outcomes/refusal.js';
import type { PhaseChanged } from './phase-changed.model.js';
import {
  type FinishPhaseInput,
  momentSchema,
  progressSchema,
  type PutBackPhaseInput,
  putBackSchema,
  type RecordProgressInput,
  type StartPhaseInput,
} from './phases.inputs.js';
import { finishPhase } from './running/finish-phase.js';
import { putBackPhase } from './running/put-back-phase.js';
import { recordProgress } from './running/record-progress.js';
import { startPhase } from './running/start-phase.js';

type Answer = Promise<PhaseChanged | Refusal>;

/** Runs phases: start, finish, put back, progress. Each step is a change of its own. */
@Injectable()
export class PhasesService {
  constructor(private readonly changes: ChangeRunner) {}

  start(ctx: Context, input: StartPhaseInput): Answer {
    return this.changes.run(ctx, { operation: 'startPhase', input }, (change) => {
      parseInput(momentSchema, input);
      return startPhase(change, input);
    });
  }

  finish(ctx: Context, input: FinishPhaseInput): Answer {
    return this.changes.run(ctx, { operation: 'finishPhase', input }, (change) => {
      parseInput(momentSchema, input);
      return finishPhase(change, input);
    });
  }

  putBack(ctx: Context, input: PutBackPhaseInput): Answer {
    return this.changes.run(ctx, { operation: 'putBackPhase', input }, (change) => {
      const { reason } = parseInput(putBackSchema, input);
      return putBackPhase(change, { ...input, reason });
    });
  }

  progress(ctx: Context, input: RecordProgressInput): Answer {
    return this.changes.run(ctx, { operation: 'recordProgress', input }, (change) => {
      const { remainingMinutes } = parseInput(progressSchema, input);
      return recordProgress(change, { ...input, remainingMinutes });
    });
  }
}
