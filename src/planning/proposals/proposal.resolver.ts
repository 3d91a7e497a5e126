import { Args, ID, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import { ProposalState } from '../../generated/prisma/enums.js';
import type { Proposal as ProposalRow } from '../../generated/prisma/client.js';
import { PeopleService, Person } from '../../people/people.face.js';
import type { Context } from '../../platform/context.js';
import { PageArgs } from '../../platform/graphql/page.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { PlanReader } from '../plan-reader.js';
import { readDifferences, type StoredDifference } from '../replan/stored-differences.js';
import { AcceptProposalInput, DropProposalInput, UndoProposalInput } from './proposal.inputs.js';
import {
  Difference,
  JobEnd,
  JobFinish,
  PlanMove,
  Proposal,
  ProposalConnection,
  ProposalDecided,
} from './proposal.model.js';
import { AcceptProposalOutcome, DropProposalOutcome, UndoProposalOutcome } from './proposal.outcomes.js';
import { ProposalsService } from './proposals.service.js';

const INPUT = { description: 'What is asked for.' };
const STATE = { type: () => ProposalState, nullable: true, description: 'Only those in this state.' };

@Resolver(() => Proposal)
export class ProposalResolver {
  constructor(
    private readonly plan: PlanReader,
    private readonly proposalsService: ProposalsService,
    private readonly people: PeopleService,
  ) {}

  @Query(() => ProposalConnection, { description: 'The proposals in the order they were opened.' })
  proposals(@Ctx() ctx: Context, @Args() page: PageArgs, @Args('state', STATE) state: ProposalState | null) {
    return this.plan.proposals(ctx, page, state ?? null);
  }

  @Query(() => Proposal, { nullable: true, description: 'One proposal; null when there is none of that id.' })
  proposal(
    @Ctx() ctx: Context,
    @Args('id', { type: () => ID, description: 'Id of the proposal.' }) id: string,
  ) {
    return this.plan.proposalById(ctx, id);
  }

  @ResolveField(() => Person, { nullable: true, description: 'Who decided it; null while nobody has.' })
  decidedBy(@Ctx() ctx: Context, @Parent() proposal: ProposalRow) {
    return proposal.decidedById && this.people.byId(ctx, proposal.decidedById);
  }

  @ResolveField(() => [Difference], { description: 'The phases that move, in a fixed order.' })
  differences(@Parent() proposal: ProposalRow): (Difference & Pick<StoredDifference, 'reason'>)[] {
    return readDifferences(proposal.differences).phases.map((one) => ({
      phaseId: one.phaseId,
      startBefore: new Date(one.startBefore),
      startAfter: dateOf(one.startAfter),
      finishBefore: new Date(one.finishBefore),
      finishAfter: dateOf(one.finishAfter),
      crewBeforeId: one.crewBeforeId,
      crewAfterId: one.crewAfterId,
      reason: one.reason,
    }));
  }

  @ResolveField(() => [JobFinish], { description: 'The jobs whose end moves, in a fixed order.' })
  jobFinishes(@Parent() proposal: ProposalRow): JobFinish[] {
    return readDifferences(proposal.differences).jobs.map(({ jobId, before, after }) => ({
      jobId,
      before: new Date(before),
      after: dateOf(after),
    }));
  }

  @ResolveField(() => [PlanMove], {
    description:
      'Of an improved plan or a move: the phases without a promise that move against the plan in force, in a fixed order.',
  })
  moves(@Parent() proposal: ProposalRow): (PlanMove & Pick<StoredDifference, 'reason'>)[] {
    return (readDifferences(proposal.differences).moves ?? []).map((one) => ({
      ...one,
      startBefore: dateOf(one.startBefore),
      startAfter: dateOf(one.startAfter),
      finishBefore: dateOf(one.finishBefore),
      finishAfter: dateOf(one.finishAfter),
    }));
  }

  @ResolveField(() => [JobEnd], {
    description:
      'Of an improved plan or a move: the jobs whose end moves against the plan in force, in a fixed order.',
  })
  jobEnds(@Parent() proposal: ProposalRow): JobEnd[] {
    return (readDifferences(proposal.differences).ends ?? []).map(({ jobId, before, after }) => ({
      jobId,
      before: dateOf(before),
      after: dateOf(after),
    }));
  }

  @ResolveField(() => Boolean, {
    description: 'Whether its acceptance can still be undone, as far as the plan goes.',
  })
  undoable(@Ctx() ctx: Context, @Parent() proposal: ProposalRow) {
    return this.plan.undoable(ctx, proposal);
  }

  @Mutation(() => AcceptProposalOutcome, { description: 'Moves the commitments as the proposal says.' })
  @Allow('office')
  acceptProposal(@Ctx() ctx: Context, @Args('input', INPUT) input: AcceptProposalInput) {
    return this.proposalsService.accept(ctx, input);
  }

  @Mutation(() => UndoProposalOutcome, {
    description:
      'Takes the acceptance of a proposal back, while nothing else has been planned or promised since. People hear of the former dates again.',
  })
  @Allow('office')
  undoProposal(@Ctx() ctx: Context, @Args('input', INPUT) input: UndoProposalInput) {
    return this.proposalsService.undo(ctx, input);
  }

  @Mutation(() => DropProposalOutcome, { description: 'Keeps the commitments as they are.' })
  @Allow('office')
  dropProposal(@Ctx() ctx: Context, @Args('input', INPUT) input: DropProposalInput) {
    return this.proposalsService.drop(ctx, input);
  }
}

@Resolver(() => ProposalDecided)
export class ProposalDecidedResolver {
  constructor(private readonly plan: PlanReader) {}

  @ResolveField(() => Proposal, { nullable: true, description: 'The proposal.' })
  proposal(@Ctx() ctx: Context, @Parent() done: ProposalDecided) {
    return this.plan.proposalById(ctx, done.proposalId);
  }
}

const dateOf = (iso: string | null): Date | null => (iso === null ? null : new Date(iso));
