import { Args, ID, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import { Job, JobReader } from '../jobs/jobs.face.js';
import { PeopleService, Person } from '../people/people.face.js';
import type { Context } from '../platform/context.js';
import { connectionType, PageArgs } from '../platform/graphql/page.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { JournalEntry } from './journal-entry.model.js';
import { JournalReader, type JournalRow } from './journal-reader.js';

const JournalEntryConnection = connectionType('JournalEntry', JournalEntry);
const JOB = { type: () => ID, nullable: true, description: 'Only entries of this job.' };
const SINCE = { type: () => String, description: 'Number of the newest change already seen; 0 for all.' };

@Resolver(() => JournalEntry)
export class JournalResolver {
  constructor(
    private readonly reader: JournalReader,
    private readonly jobReader: JobReader,
    private readonly people: PeopleService,
  ) {}

  @Query(() => JournalEntryConnection, { description: 'The journal, newest first.' })
  journal(@Ctx() ctx: Context, @Args() page: PageArgs, @Args('jobId', JOB) jobId?: string | null) {
    return this.reader.page(ctx, page, jobId ?? null);
  }

  @Query(() => [JournalEntry], {
    description:
      'Changes after a number, oldest first, at most 500; ask again from the last when there are as many.',
  })
  changesSince(@Ctx() ctx: Context, @Args('changeNumber', SINCE) changeNumber: string) {
    return this.reader.since(ctx, changeNumber);
  }

  @ResolveField(() => Job, {
    nullable: true,
    description: 'The job it is about; null when it is about no single one.',
  })
  job(@Ctx() ctx: Context, @Parent() entry: JournalRow) {
    return this.jobReader.byId(ctx, entry.jobId);
  }

  @ResolveField(() => Person, { nullable: true, description: 'Who did it; null for the service itself.' })
  person(@Ctx() ctx: Context, @Parent() entry: JournalRow) {
    return entry.personId && this.people.byId(ctx, entry.personId);
  }

  @ResolveField(() => String, {
    nullable: true,
    description: 'Name of whoever did it by a signed link; null when none was used.',
  })
  byLink(@Parent() { detail }: JournalRow): string | null {
    const name = (detail as { byLink?: unknown } | null)?.byLink;
    return typeof name === 'string' ? name : null;
  }

  @ResolveField(() => String, { description: 'What exactly was changed, as JSON text.' })
  detail(@Parent() entry: JournalRow) {
    return JSON.stringify(entry.detail);
  }
}
