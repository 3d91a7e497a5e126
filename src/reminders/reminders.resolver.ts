import { Args, ID, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { Reminder as ReminderRow } from '../generated/prisma/client.js';
import { ReminderState } from '../generated/prisma/enums.js';
import { Job, JobReader } from '../jobs/jobs.face.js';
import type { Context } from '../platform/context.js';
import { PageArgs } from '../platform/graphql/page.js';
import { Ctx } from '../platform/graphql/request-context.js';
import type { ReminderDetail } from './reminder-kind.js';
import { Reminder, ReminderConnection } from './reminder.model.js';
import { RemindersService } from './reminders.service.js';

@Resolver(() => Reminder)
export class RemindersResolver {
  constructor(
    private readonly remindersService: RemindersService,
    private readonly jobReader: JobReader,
  ) {}

  @Query(() => ReminderConnection, {
    description: 'The reminders of the company in the order they were first wanted.',
  })
  reminders(
    @Ctx() ctx: Context,
    @Args() page: PageArgs,
    @Args('jobId', { type: () => ID, nullable: true, description: 'Only those about this job.' })
    jobId: string | null = null,
    @Args('state', { type: () => ReminderState, nullable: true, description: 'Only those in this state.' })
    state: ReminderState | null = null,
  ) {
    return this.remindersService.page(ctx, page, { jobId, state });
  }

  @ResolveField(() => String, { description: 'What it says, in one line.' })
  title(@Parent() reminder: ReminderRow): string {
    return (reminder.detail as unknown as ReminderDetail).message.subject;
  }

  @ResolveField(() => Job, { nullable: true, description: 'The job it is about; null for the company.' })
  job(@Ctx() ctx: Context, @Parent() reminder: ReminderRow) {
    return this.jobReader.byId(ctx, reminder.jobId);
  }
}
