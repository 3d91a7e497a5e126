import { Args, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { Phase as PhaseRow, ProtectionChoice as ChoiceRow } from '../../generated/prisma/client.js';
import { Job, JobReader, Phase, PhaseReader } from '../../jobs/jobs.face.js';
import { PeopleService, Person } from '../../people/people.face.js';
import type { Context } from '../../platform/context.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { Protection, protectionModel } from '../protection/protection.model.js';
import type { ProtectionSpec } from '../protection/protection-spec.js';
import { ChoiceReader } from './choice-reader.js';
import { ChooseProtectionInput, ProtectOrWaitInput } from './protect-or-wait.inputs.js';
import { BranchJob, ProtectionChoice, ProtectOrWait } from './protect-or-wait.model.js';
import { ChooseProtectionOutcome, ProtectionChosen } from './protect-or-wait.outcomes.js';
import { ProtectOrWaitService } from './protect-or-wait.service.js';

const INPUT = { description: 'What is to be placed.' };

@Resolver(() => ProtectOrWait)
export class ProtectOrWaitResolver {
  constructor(
    private readonly service: ProtectOrWaitService,
    private readonly phases: PhaseReader,
  ) {}

  @Query(() => ProtectOrWait, {
    nullable: true,
    description:
      'Both ways with a pour that meets cold weather, carried through the whole plan; null when there is no such phase, or it has placed already. Writes nothing.',
  })
  protectOrWait(@Ctx() ctx: Context, @Args('input', INPUT) input: ProtectOrWaitInput) {
    return this.service.compare(ctx, input);
  }

  @ResolveField(() => Phase, { description: 'The phase that is to place it.' })
  phase(@Ctx() ctx: Context, @Parent() { phaseId }: ProtectOrWait) {
    return this.phases.byId(ctx, phaseId);
  }

  @Mutation(() => ChooseProtectionOutcome, {
    description: 'Chooses to protect a pour or to wait; plan, equipment and reminders follow.',
  })
  @Allow('office')
  chooseProtection(@Ctx() ctx: Context, @Args('input', INPUT) input: ChooseProtectionInput) {
    return this.service.choose(ctx, input);
  }
}

@Resolver(() => BranchJob)
export class BranchJobResolver {
  constructor(private readonly jobs: JobReader) {}

  @ResolveField(() => Job, { description: 'The job.' })
  job(@Ctx() ctx: Context, @Parent() { jobId }: BranchJob) {
    return this.jobs.byId(ctx, jobId);
  }
}

@Resolver(() => ProtectionChosen)
export class ProtectionChosenResolver {
  constructor(private readonly phases: PhaseReader) {}

  @ResolveField(() => Phase, { description: 'The phase as it now stands.' })
  phase(@Ctx() ctx: Context, @Parent() { phaseId }: ProtectionChosen) {
    return this.phases.byId(ctx, phaseId);
  }
}

@Resolver(() => ProtectionChoice)
export class ProtectionChoiceResolver {
  constructor(private readonly people: PeopleService) {}

  @ResolveField(() => Protection, { nullable: true, description: 'The protection chosen; null for waiting.' })
  protection(@Parent() { plan }: ChoiceRow): Protection | null {
    return plan === null ? null : protectionModel(plan as unknown as ProtectionSpec);
  }

  @ResolveField(() => Person, { nullable: true, description: 'Who chose.' })
  by(@Ctx() ctx: Context, @Parent() { chosenById }: ChoiceRow) {
    return chosenById ? this.people.byId(ctx, chosenById) : null;
  }
}

@Resolver(() => Phase)
export class PhaseChoiceResolver {
  constructor(private readonly choices: ChoiceReader) {}

  @ResolveField(() => ProtectionChoice, {
    nullable: true,
    description: 'What the office chose for it in the cold; null when nothing was chosen.',
  })
  protectionChoice(@Ctx() ctx: Context, @Parent() { id }: PhaseRow) {
    return this.choices.ofPhase(ctx, id);
  }
}
