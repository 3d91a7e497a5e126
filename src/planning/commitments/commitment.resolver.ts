import { Args, Mutation, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import { Crew, CrewReader } from '../../crews/crews.face.js';
import type { Commitment as CommitmentRow } from '../../generated/prisma/client.js';
import { Phase } from '../../jobs/jobs.face.js';
import { PeopleService, Person } from '../../people/people.face.js';
import type { Context } from '../../platform/context.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { PlanReader } from '../plan-reader.js';
import {
  AssignCrewInput,
  CommitJobInput,
  CommitPhaseInput,
  PinPhaseInput,
  ReleaseCommitmentInput,
} from './commitment.inputs.js';
import { Commitment, CommitmentChanged } from './commitment.model.js';
import {
  AssignCrewOutcome,
  CommitJobOutcome,
  CommitPhaseOutcome,
  PinPhaseOutcome,
  ReleaseCommitmentOutcome,
} from './commitment.outcomes.js';
import { CommitmentsService } from './commitments.service.js';
import { PinsService } from './pins.service.js';

const INPUT = { description: 'What is asked for.' };

@Resolver(() => Commitment)
export class CommitmentResolver {
  constructor(
    private readonly crews: CrewReader,
    private readonly people: PeopleService,
  ) {}

  @ResolveField(() => Crew, { nullable: true, description: 'Who is promised; null for a wait.' })
  crew(@Ctx() ctx: Context, @Parent() commitment: CommitmentRow) {
    return this.crews.byId(ctx, commitment.crewId);
  }

  @ResolveField(() => Person, { nullable: true, description: 'Who made it.' })
  madeBy(@Ctx() ctx: Context, @Parent() commitment: CommitmentRow) {
    return commitment.madeById && this.people.byId(ctx, commitment.madeById);
  }
}

@Resolver(() => Phase)
export class PhaseCommitmentResolver {
  constructor(private readonly plan: PlanReader) {}

  @ResolveField(() => Commitment, {
    nullable: true,
    description:
      'The dates told to people; null when none were. A finished phase shows those it was finished under.',
  })
  commitment(@Ctx() ctx: Context, @Parent() phase: Phase) {
    return this.plan.commitmentOf(ctx, phase.id);
  }
}

@Resolver(() => CommitmentChanged)
export class CommitmentChangedResolver {
  constructor(private readonly plan: PlanReader) {}

  @ResolveField(() => [Commitment], { description: 'The commitments.' })
  commitments(@Ctx() ctx: Context, @Parent() done: CommitmentChanged) {
    return this.plan.commitmentsById(ctx, done.commitmentIds);
  }
}

@Resolver()
export class SchedulingResolver {
  constructor(
    private readonly commitments: CommitmentsService,
    private readonly pins: PinsService,
  ) {}

  @Mutation(() => CommitPhaseOutcome, { description: 'Promises dates for a phase.' })
  @Allow('office')
  commitPhase(@Ctx() ctx: Context, @Args('input', INPUT) input: CommitPhaseInput) {
    return this.commitments.commitPhase(ctx, input);
  }

  @Mutation(() => CommitJobOutcome, {
    description: 'Promises every phase of a job that has not begun, as planned.',
  })
  @Allow('office')
  commitJob(@Ctx() ctx: Context, @Args('input', INPUT) input: CommitJobInput) {
    return this.commitments.commitJob(ctx, input);
  }

  @Mutation(() => ReleaseCommitmentOutcome, { description: 'Takes back the promise of a phase.' })
  @Allow('office')
  releaseCommitment(@Ctx() ctx: Context, @Args('input', INPUT) input: ReleaseCommitmentInput) {
    return this.commitments.release(ctx, input);
  }

  @Mutation(() => PinPhaseOutcome, { description: 'Fixes the start of a phase, or frees it.' })
  @Allow('office')
  pinPhase(@Ctx() ctx: Context, @Args('input', INPUT) input: PinPhaseInput) {
    return this.pins.pin(ctx, input);
  }

  @Mutation(() => AssignCrewOutcome, { description: 'Requires a crew for a phase, or lets the plan choose.' })
  @Allow('office')
  assignCrew(@Ctx() ctx: Context, @Args('input', INPUT) input: AssignCrewInput) {
    return this.pins.assignCrew(ctx, input);
  }
}
