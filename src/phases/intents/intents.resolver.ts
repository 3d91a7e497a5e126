import { Args, Mutation, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import { Phase, PhaseReader } from '../../jobs/jobs.face.js';
import type { Context } from '../../platform/context.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { MarkPhaseInput, NotePhaseInput, TellRemainingInput } from './intents.inputs.js';
import {
  MarkPhaseOutcome,
  NotePhaseOutcome,
  PhaseSettled,
  TellRemainingOutcome,
} from './intents.outcomes.js';
import { PhaseIntentsService } from './intents.service.js';

const INPUT = { description: 'What one field is to be, and what it was when that was asked for.' };

@Resolver(() => PhaseSettled)
export class PhaseIntentsResolver {
  constructor(
    private readonly intents: PhaseIntentsService,
    private readonly reader: PhaseReader,
  ) {}

  @ResolveField(() => Phase, { description: 'The phase as it now stands.' })
  phase(@Ctx() ctx: Context, @Parent() { phaseId }: PhaseSettled) {
    return this.reader.byId(ctx, phaseId);
  }

  @Mutation(() => MarkPhaseOutcome, {
    description:
      'Marks when a phase started or finished, unless somebody else marked it otherwise meanwhile; over a seen mark it is a correction.',
  })
  @Allow('office', 'foreman')
  markPhase(@Ctx() ctx: Context, @Args('input', INPUT) input: MarkPhaseInput) {
    return this.intents.mark(ctx, input);
  }

  @Mutation(() => NotePhaseOutcome, {
    description: 'Writes the note of a phase, unless somebody else wrote another meanwhile.',
  })
  @Allow('office', 'foreman')
  notePhase(@Ctx() ctx: Context, @Args('input', INPUT) input: NotePhaseInput) {
    return this.intents.note(ctx, input);
  }

  @Mutation(() => TellRemainingOutcome, {
    description: 'Tells how much work is left, unless somebody else told otherwise meanwhile.',
  })
  @Allow('office', 'foreman')
  tellRemaining(@Ctx() ctx: Context, @Args('input', INPUT) input: TellRemainingInput) {
    return this.intents.remaining(ctx, input);
  }
}
