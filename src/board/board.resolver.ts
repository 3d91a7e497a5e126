import { Args, GraphQLISODateTime, ID, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import { Inspection } from '../inspections/inspections.face.js';
import { Proposal } from '../planning/planning.face.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { Board } from './board.model.js';
import { type BoardRows, BoardService } from './board.service.js';
import { BoardExtrasReader } from './board-extras-reader.js';

const FROM = { type: () => GraphQLISODateTime, description: 'First moment of the stretch.' };
const TO = {
  type: () => GraphQLISODateTime,
  description: 'End of the stretch, not part of it; at most 400 days after from.',
};
const JOBS = { type: () => [ID], nullable: true, description: 'Only these jobs; all when left out.' };
const CREWS = {
  type: () => [ID],
  nullable: true,
  description: 'Only what these crews do; all when left out.',
};

@Resolver(() => Board)
export class BoardResolver {
  constructor(
    private readonly service: BoardService,
    private readonly extras: BoardExtrasReader,
  ) {}

  @Query(() => Board, { description: 'The schedule board for a stretch of at most 400 days.' })
  board(
    @Ctx() ctx: Context,
    @Args('from', FROM) from: Date,
    @Args('to', TO) to: Date,
    @Args('jobIds', JOBS) jobIds?: string[] | null,
    @Args('crewIds', CREWS) crewIds?: string[] | null,
  ) {
    return this.service.board(ctx, { from, to, jobIds, crewIds });
  }

  @ResolveField(() => [Inspection], {
    description: 'Inspections of the jobs shown whose booked, planned or held visit touches the stretch.',
  })
  inspections(@Ctx() ctx: Context, @Parent() board: BoardRows) {
    return this.extras.inspections(ctx, board);
  }

  @ResolveField(() => Proposal, { nullable: true, description: 'The proposal that waits for the office.' })
  openProposal(@Ctx() ctx: Context) {
    return this.extras.openProposal(ctx);
  }
}
