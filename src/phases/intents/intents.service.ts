import { Injectable } from '@nestjs/common';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import type { Context } from '../../platform/context.js';
import { parseInput } from '../../platform/outcomes/parse-input.js';
import { progressSchema } from '../phases.inputs.js';
import {
  type MarkPhaseInput,
  markSchema,
  type NotePhaseInput,
  noteSchema,
  type TellRemainingInput,
} from './intents.inputs.js';
import { markPhase } from './mark-phase.js';
import { notePhase } from './note-phase.js';
import { tellRemaining } from './tell-remaining.js';

/** Settles what people want of single fields of a phase, who may have been out of reach for weeks. */
@Injectable()
export class PhaseIntentsService {
  constructor(private readonly changes: ChangeRunner) {}

  mark(ctx: Context, input: MarkPhaseInput) {
    return this.changes.run(ctx, { operation: 'markPhase', input }, async (change) => {
      parseInput(markSchema, input);
      return { ...(await markPhase(change, input)) };
    });
  }

  note(ctx: Context, input: NotePhaseInput) {
    return this.changes.run(ctx, { operation: 'notePhase', input }, async (change) => {
      const { note } = parseInput(noteSchema, input);
      return { ...(await notePhase(change, { ...input, note })) };
    });
  }

  remaining(ctx: Context, input: TellRemainingInput) {
    return this.changes.run(ctx, { operation: 'tellRemaining', input }, async (change) => {
      parseInput(progressSchema, input);
      return { ...(await tellRemaining(change, input)) };
    });
  }
}
