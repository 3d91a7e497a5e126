import { Args, ID, Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { Notice as NoticeRow } from '../generated/prisma/client.js';
import { Job, JobReader } from '../jobs/jobs.face.js';
import type { Context } from '../platform/context.js';
import { PageArgs } from '../platform/graphql/page.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { Delivery, Notice, NoticeConnection } from './notice.model.js';
import { NoticesService } from './notices.service.js';
import { storedOf } from './stored-notice.js';

@Resolver(() => Notice)
export class NoticesResolver {
  constructor(
    private readonly noticesService: NoticesService,
    private readonly jobReader: JobReader,
  ) {}

  @Query(() => NoticeConnection, {
    description: 'The notices of the company in the order they were written.',
  })
  notices(
    @Ctx() ctx: Context,
    @Args() page: PageArgs,
    @Args('jobId', { type: () => ID, nullable: true, description: 'Only those about this job.' })
    jobId: string | null = null,
  ) {
    return this.noticesService.page(ctx, page, jobId);
  }

  @ResolveField(() => String, { description: 'What it says, in one line.' })
  title(@Parent() notice: NoticeRow): string {
    return storedOf(notice).message.subject;
  }

  @ResolveField(() => Job, { nullable: true, description: 'The job it is about; null for the company.' })
  job(@Ctx() ctx: Context, @Parent() notice: NoticeRow) {
    return this.jobReader.byId(ctx, notice.jobId);
  }

  @ResolveField(() => [Delivery], { description: 'Whom it goes to, and what has become of each copy.' })
  deliveries(@Ctx() ctx: Context, @Parent() notice: NoticeRow) {
    return this.noticesService.deliveries(ctx, notice.id);
  }
}
