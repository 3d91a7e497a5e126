import { Args, ID, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import { Crew, CrewReader } from '../../crews/crews.face.js';
import { Phase, PhaseReader } from '../../jobs/jobs.face.js';
import type { Context } from '../../platform/context.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { Proposal } from '../proposals/proposal.model.js';
import { ProposeMoveInput } from './move.inputs.js';
import { MoveProposed, ProposedMove } from './move.model.js';
import { ProposeMoveOutcome } from './move.outcomes.js';
import { MoveReader } from './move-reader.js';
import { MovesService } from './moves.service.js';

const INPUT = { description: 'What is asked for.' };

@Resolver(() => ProposedMove)
export class ProposedMoveResolver {
  constructor(
    private readonly reader: MoveReader,
    private readonly service: MovesService,
    private readonly phases: PhaseReader,
    private readonly crews: CrewReader,
  ) {}

  @Query(() => ProposedMove, {
    nullable: true,
    description: 'The move asked for last; null when there never was one.',
  })
  newestMove(@Ctx() ctx: Context) {
    return this.reader.newest(ctx);
  }

  @Query(() => ProposedMove, { nullable: true, description: 'One move; null when there is none of that id.' })
  proposedMove(
    @Ctx() ctx: Context,
    @Args('id', { type: () => ID, description: 'Id of the move.' }) id: string,
  ) {
    return this.reader.byId(ctx, id);
  }

  @ResolveField(() => Phase, { nullable: true, description: 'The phase that is to move.' })
  phase(@Ctx() ctx: Context, @Parent() move: ProposedMove) {
    return this.phases.byId(ctx, move.phaseId);
  }

  @ResolveField(() => Crew, {
    nullable: true,
    description: 'The crew that is to do it; null when that is left to the plan.',
  })
  crew(@Ctx() ctx: Context, @Parent() move: ProposedMove) {
    return this.crews.byId(ctx, move.crewId);
  }

  @ResolveField(() => Proposal, {
    nullable: true,
    description: 'The proposal as which it waits or waited; null when it moved nothing.',
  })
  proposal(@Ctx() ctx: Context, @Parent() move: ProposedMove) {
    return this.reader.proposalOf(ctx, move.id);
  }

  @Mutation(() => ProposeMoveOutcome, {
    description:
      'Tries another start for a phase. It waits as a proposal, and changes nothing by itself; a move that was waiting gives way to it.',
  })
  @Allow('office')
  proposeMove(@Ctx() ctx: Context, @Args('input', INPUT) input: ProposeMoveInput) {
    return this.service.propose(ctx, input);
  }
}

@Resolver(() => MoveProposed)
export class MoveProposedResolver {
  constructor(private readonly reader: MoveReader) {}

  @ResolveField(() => ProposedMove, { nullable: true, description: 'The move.' })
  move(@Ctx() ctx: Context, @Parent() done: MoveProposed) {
    return this.reader.byId(ctx, done.moveId);
  }
}

@Resolver(() => Proposal)
export class ProposalMoveResolver {
  constructor(private readonly reader: MoveReader) {}

  @ResolveField(() => ProposedMove, {
    nullable: true,
    description: 'The move that it offers; null for every other proposal.',
  })
  move(@Ctx() ctx: Context, @Parent() proposal: Proposal & { readonly moveId: string | null }) {
    return this.reader.byId(ctx, proposal.moveId);
  }
}
