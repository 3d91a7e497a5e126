import { Args, Mutation, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Context } from '../../platform/context.js';
import { Allow, Ctx } from '../../platform/graphql/request-context.js';
import { Job } from '../job.model.js';
import { JobReader } from '../job-reader.js';
import {
  AddLinkOutcome,
  AddPhaseOutcome,
  DropPhaseOutcome,
  LinkChanged,
  RemoveLinkOutcome,
} from '../jobs.outcomes.js';
import { Link } from '../link.model.js';
import { PhaseReader } from '../phase-reader.js';
import { AddPhaseService } from './add-phase.service.js';
import { AddLinkInput, AddPhaseInput, DropPhaseInput, RemoveLinkInput } from './custom.inputs.js';
import { DropPhaseService } from './drop-phase.service.js';
import { LinksService } from './links.service.js';

const INPUT = { description: 'What is asked for.' };

@Resolver(() => LinkChanged)
export class CustomResolver {
  constructor(
    private readonly adding: AddPhaseService,
    private readonly dropping: DropPhaseService,
    private readonly links: LinksService,
    private readonly jobReader: JobReader,
    private readonly phaseReader: PhaseReader,
  ) {}

  @Mutation(() => AddPhaseOutcome, { description: 'Adds a phase that the template does not have.' })
  @Allow('office')
  addPhase(@Ctx() ctx: Context, @Args('input', INPUT) input: AddPhaseInput) {
    return this.adding.add(ctx, input);
  }

  @Mutation(() => DropPhaseOutcome, {
    description: 'Takes out a phase that has not started; what waited for it waits for what it waited for.',
  })
  @Allow('office')
  dropPhase(@Ctx() ctx: Context, @Args('input', INPUT) input: DropPhaseInput) {
    return this.dropping.drop(ctx, input);
  }

  @Mutation(() => AddLinkOutcome, { description: 'Adds a dependency between two phases of a job.' })
  @Allow('office')
  addLink(@Ctx() ctx: Context, @Args('input', INPUT) input: AddLinkInput) {
    return this.links.add(ctx, input);
  }

  @Mutation(() => RemoveLinkOutcome, { description: 'Removes a dependency; hold points stay.' })
  @Allow('office')
  removeLink(@Ctx() ctx: Context, @Args('input', INPUT) input: RemoveLinkInput) {
    return this.links.remove(ctx, input);
  }

  @ResolveField(() => Job, { description: 'The job of the link.' })
  job(@Ctx() ctx: Context, @Parent() done: LinkChanged) {
    return this.jobReader.byId(ctx, done.jobId);
  }

  @ResolveField(() => Link, { nullable: true, description: 'The link; null once it is removed.' })
  link(@Ctx() ctx: Context, @Parent() done: LinkChanged) {
    return this.phaseReader.linkById(ctx, done.linkId);
  }
}
