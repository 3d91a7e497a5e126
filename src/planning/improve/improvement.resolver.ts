import { Args, ID, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { Objective } from '../../../shared/schedule/improve/objective.js';
import { SLOT_MINUTES } from '../../../shared/schedule/slot.js';
import type { Improvement as ImprovementRow } from '../../generated/prisma/client.js';
import { PeopleService, Person } from '../../people/people.face.js';
import type { Context } from '../../platform/context.js';
import { PageArgs } from '../../platform/graphql/page.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { Proposal } from '../proposals/proposal.model.js';
import { StartImprovementInput, StopImprovementInput } from './improvement.inputs.js';
import {
  Improvement,
  ImprovementChanged,
  ImprovementConnection,
  ImprovementOutcome,
  ImprovementProgress,
} from './improvement.model.js';
import { StartImprovementOutcome, StopImprovementOutcome } from './improvement.outcomes.js';
import { ImprovementReader } from './improvement-reader.js';
import { ImprovementsService } from './improvements.service.js';
import { readOutcome, readProgress } from './stored-outcome.js';

const INPUT = { description: 'What is asked for.' };

@Resolver(() => Improvement)
export class ImprovementResolver {
  constructor(
    private readonly reader: ImprovementReader,
    private readonly service: ImprovementsService,
    private readonly people: PeopleService,
  ) {}

  @Query(() => ImprovementConnection, {
    description: 'The searches for a better plan, in the order they were asked for.',
  })
  improvements(@Ctx() ctx: Context, @Args() page: PageArgs) {
    return this.reader.page(ctx, page);
  }

  @Query(() => Improvement, {
    nullable: true,
    description: 'The search asked for last; null when there never was one.',
  })
  newestImprovement(@Ctx() ctx: Context) {
    return this.reader.newest(ctx);
  }

  @Query(() => Improvement, {
    nullable: true,
    description: 'One search; null when there is none of that id.',
  })
  improvement(
    @Ctx() ctx: Context,
    @Args('id', { type: () => ID, description: 'Id of the search.' }) id: string,
  ) {
    return this.reader.byId(ctx, id);
  }

  @ResolveField(() => Boolean, { description: 'Whether somebody has asked it to stop.' })
  stopping(@Parent() run: ImprovementRow): boolean {
    return run.state === 'running' && run.stop !== null;
  }

  @ResolveField(() => ImprovementProgress, {
    nullable: true,
    description: 'How far it is; null before it has said so.',
  })
  progress(@Parent() run: ImprovementRow): ImprovementProgress | null {
    return readProgress(run.progress);
  }

  @ResolveField(() => ImprovementOutcome, {
    nullable: true,
    description:
      'What it has found, on the facts as they stood when it was last looked at; null before it has ended.',
  })
  outcome(@Parent() run: ImprovementRow) {
    const outcome = readOutcome(run.outcome);
    if (!outcome?.before || !outcome.after) return null;
    return { ...outcome, before: costOf(outcome.before), after: costOf(outcome.after) };
  }

  @ResolveField(() => Proposal, {
    nullable: true,
    description: 'The proposal it ended as; null when it made none.',
  })
  proposal(@Ctx() ctx: Context, @Parent() run: ImprovementRow) {
    return this.reader.proposalOf(ctx, run.id);
  }

  @ResolveField(() => Person, { nullable: true, description: 'Who asked for it.' })
  askedBy(@Ctx() ctx: Context, @Parent() run: ImprovementRow) {
    return run.askedById && this.people.byId(ctx, run.askedById);
  }

  @Mutation(() => StartImprovementOutcome, {
    description: 'Starts a search for a better plan. It ends as a proposal, and changes nothing by itself.',
  })
  @Allow('office')
  startImprovement(@Ctx() ctx: Context, @Args('input', INPUT) input: StartImprovementInput) {
    return this.service.start(ctx, input);
  }

  @Mutation(() => StopImprovementOutcome, { description: 'Stops a search for a better plan.' })
  @Allow('office')
  stopImprovement(@Ctx() ctx: Context, @Args('input', INPUT) input: StopImprovementInput) {
    return this.service.stop(ctx, input);
  }
}

/** Slots are nobody's measure outside the engine. */
const costOf = ({ lateness, finish, disturbance, ...rest }: Objective) => ({
  ...rest,
  latenessHours: hoursOf(lateness),
  finishHours: hoursOf(finish),
  disturbanceHours: hoursOf(disturbance),
});

const hoursOf = (slots: number): number => (slots * SLOT_MINUTES) / 60;

@Resolver(() => ImprovementChanged)
export class ImprovementChangedResolver {
  constructor(private readonly reader: ImprovementReader) {}

  @ResolveField(() => Improvement, { nullable: true, description: 'The search.' })
  improvement(@Ctx() ctx: Context, @Parent() done: ImprovementChanged) {
    return this.reader.byId(ctx, done.improvementId);
  }
}

@Resolver(() => Proposal)
export class ProposalImprovementResolver {
  constructor(private readonly reader: ImprovementReader) {}

  @ResolveField(() => Improvement, {
    nullable: true,
    description: 'The search whose plan it offers; null for a proposal that follows the plan in force.',
  })
  improvement(@Ctx() ctx: Context, @Parent() proposal: Proposal & { readonly improvementId: string | null }) {
    return this.reader.byId(ctx, proposal.improvementId);
  }
}
