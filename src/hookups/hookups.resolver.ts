import { Args, ID, Mutation, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { HeatingSet as SetRow, Hookup as HookupRow, Job as JobRow } from '../generated/prisma/client.js';
import { HookupState } from '../generated/prisma/enums.js';
import { HeatingReader, HeatingSet } from '../heating/heating.face.js';
import { Job, JobReader, Phase, PhaseReader } from '../jobs/jobs.face.js';
import { PeopleService, Person } from '../people/people.face.js';
import type { Context } from '../platform/context.js';
import { PageArgs } from '../platform/graphql/page.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { HOOKUP_CAUTIONS } from './cautions.js';
import { Circuit } from './circuit.model.js';
import { circuitOf } from './circuit-of.js';
import {
  BookHookupInput,
  RecordEnergisedInput,
  RecordHookupInput,
  RecordLeadsInput,
} from './hookup.inputs.js';
import { Hookup, HookupConnection } from './hookup.model.js';
import {
  BookHookupOutcome,
  HookupChanged,
  RecordEnergisedOutcome,
  RecordHookupOutcome,
  RecordLeadsOutcome,
} from './hookup.outcomes.js';
import { HookupReader } from './hookup-reader.js';
import { HookupsService } from './hookups.service.js';
import { leadsPass } from './leads-pass.js';
import { Need } from './need.model.js';

const INPUT = { description: 'What is asked for or was done.' };

@Resolver(() => Hookup)
export class HookupsResolver {
  constructor(
    private readonly reader: HookupReader,
    private readonly service: HookupsService,
    private readonly jobs: JobReader,
    private readonly phases: PhaseReader,
    private readonly heating: HeatingReader,
    private readonly people: PeopleService,
  ) {}

  @Query(() => Hookup, { nullable: true, description: 'One hookup; null when there is none of that id.' })
  hookup(@Ctx() ctx: Context, @Args('id', { type: () => ID, description: 'Id of the hookup.' }) id: string) {
    return this.reader.byId(ctx, id);
  }

  @Query(() => HookupConnection, { description: 'The hookups of the company in the order they were made.' })
  hookups(
    @Ctx() ctx: Context,
    @Args() page: PageArgs,
    @Args('state', { type: () => HookupState, nullable: true, description: 'Only those in this state.' })
    state?: HookupState | null,
  ) {
    return this.reader.page(ctx, page, state ?? null);
  }

  @ResolveField(() => Job, { description: 'The job it belongs to.' })
  job(@Ctx() ctx: Context, @Parent() row: HookupRow) {
    return this.jobs.byId(ctx, row.jobId);
  }

  @ResolveField(() => HeatingSet, { description: 'The heating set it connects.' })
  heatingSet(@Ctx() ctx: Context, @Parent() row: HookupRow) {
    return this.heating.byId(ctx, row.heatingSetId);
  }

  @ResolveField(() => Phase, { description: 'The phase in which it is made.' })
  phase(@Ctx() ctx: Context, @Parent() row: HookupRow) {
    return this.phases.byId(ctx, row.phaseId);
  }

  @ResolveField(() => Person, { nullable: true, description: 'The electrician; null while none has booked.' })
  electrician(@Ctx() ctx: Context, @Parent() row: HookupRow) {
    return row.electricianId ? this.people.byId(ctx, row.electricianId) : null;
  }

  @ResolveField(() => [Need], { description: 'What must be met before the electrician comes.' })
  async needs(@Ctx() ctx: Context, @Parent() row: HookupRow) {
    return (await this.reader.needs(ctx, row)).hookup;
  }

  @ResolveField(() => [Need], { description: 'What must be met before the set may be energised.' })
  async energisingNeeds(@Ctx() ctx: Context, @Parent() row: HookupRow) {
    return (await this.reader.needs(ctx, row)).energising;
  }

  @ResolveField(() => String, {
    nullable: true,
    description: 'Where the leads come through the wall; null where no plan of the entry was drawn.',
  })
  async leadsPass(@Ctx() ctx: Context, @Parent() row: HookupRow): Promise<string | null> {
    const job = await this.jobs.byId(ctx, row.jobId);
    return job && leadsPass(job);
  }

  @ResolveField(() => Circuit, { description: 'The circuit that the label asks for.' })
  async circuit(@Ctx() ctx: Context, @Parent() row: HookupRow): Promise<Circuit> {
    const set = await this.heating.byId(ctx, row.heatingSetId);
    if (!set) throw new Error(`Hookup ${row.id} connects no heating set`);
    return circuitOf(set);
  }

  @ResolveField(() => [String], { description: 'What an electrician must mind.' })
  cautions(): readonly string[] {
    return HOOKUP_CAUTIONS;
  }

  @Mutation(() => RecordLeadsOutcome, { description: 'Records how the leads of a heating set stand.' })
  @Allow('office', 'foreman')
  recordLeads(@Ctx() ctx: Context, @Args('input', INPUT) input: RecordLeadsInput) {
    return this.service.recordLeads(ctx, input);
  }

  @Mutation(() => BookHookupOutcome, { description: 'Books the day of a hookup whose needs are met.' })
  @Allow('office', 'electrician')
  bookHookup(@Ctx() ctx: Context, @Args('input', INPUT) input: BookHookupInput) {
    return this.service.book(ctx, input);
  }

  @Mutation(() => RecordHookupOutcome, { description: 'Records a connection that was made.' })
  @Allow('office', 'electrician')
  recordHookup(@Ctx() ctx: Context, @Args('input', INPUT) input: RecordHookupInput) {
    return this.service.recordHookup(ctx, input);
  }

  @Mutation(() => RecordEnergisedOutcome, { description: 'Records that a heating set was energised.' })
  @Allow('office', 'electrician')
  recordEnergised(@Ctx() ctx: Context, @Args('input', INPUT) input: RecordEnergisedInput) {
    return this.service.recordEnergised(ctx, input);
  }
}

@Resolver(() => HookupChanged)
export class HookupChangedResolver {
  constructor(private readonly reader: HookupReader) {}

  @ResolveField(() => Hookup, { description: 'The hookup as it now stands.' })
  hookup(@Ctx() ctx: Context, @Parent() { hookupId }: HookupChanged) {
    return this.reader.byId(ctx, hookupId);
  }
}

@Resolver(() => Job)
export class JobHookupsResolver {
  constructor(private readonly reader: HookupReader) {}

  @ResolveField(() => [Hookup], { description: 'The hookups of the job, one for each heating set.' })
  hookups(@Ctx() ctx: Context, @Parent() job: JobRow) {
    return this.reader.ofJob(ctx, job.id);
  }
}

@Resolver(() => HeatingSet)
export class HeatingSetHookupResolver {
  constructor(private readonly reader: HookupReader) {}

  @ResolveField(() => Hookup, { nullable: true, description: 'Its connection.' })
  hookup(@Ctx() ctx: Context, @Parent() set: SetRow) {
    return this.reader.ofSet(ctx, set.id);
  }
}
