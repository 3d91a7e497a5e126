import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import { Finding } from '../inspections/inspections.face.js';
import { PeopleService, Person } from '../people/people.face.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import type { JobFinding } from './job-findings.js';

/** Who waived a broken rule of the design. */
@Resolver(() => Finding)
export class FindingFieldsResolver {
  constructor(private readonly people: PeopleService) {}

  @ResolveField(() => Person, { nullable: true, description: 'Who waived it; null when nobody has.' })
  waivedBy(@Ctx() ctx: Context, @Parent() { waivedById }: Finding & Partial<JobFinding>) {
    return waivedById ? this.people.byId(ctx, waivedById) : null;
  }
}
