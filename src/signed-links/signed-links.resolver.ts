import { Args, Int, Mutation, Parent, ResolveField, Resolver } from '@nestjs/graphql';
import { GraphQLISODateTime } from '@nestjs/graphql';
import type { Job as JobRow, SignedLink as LinkRow } from '../generated/prisma/client.js';
import { Job } from '../jobs/jobs.face.js';
import { PeopleService } from '../people/people.face.js';
import { Clock } from '../platform/clock/clock.js';
import type { Context } from '../platform/context.js';
import { Allow, Ctx } from '../platform/graphql/request-context.js';
import { LinkReader } from './link-reader.js';
import { standingOf } from './link-standing.js';
import { LinkState, SignedLink } from './signed-link.model.js';
import { MakeSignedLinkInput, RevokeSignedLinkInput } from './signed-links.inputs.js';
import {
  MakeSignedLinkOutcome,
  RevokeSignedLinkOutcome,
  SignedLinkChanged,
  SignedLinkMade,
} from './signed-links.outcomes.js';
import { SignedLinksService } from './signed-links.service.js';

const INPUT = { description: 'For whom and what, or which link.' };

@Resolver(() => SignedLink)
export class SignedLinksResolver {
  constructor(
    private readonly reader: LinkReader,
    private readonly service: SignedLinksService,
    private readonly people: PeopleService,
    private readonly clock: Clock,
  ) {}

  @ResolveField(() => LinkState, { description: 'Whether it opens anything now.' })
  async state(@Ctx() ctx: Context, @Parent() row: LinkRow): Promise<LinkState> {
    const person = row.personId
      ? { active: (await this.people.byId(ctx, row.personId))?.active ?? false }
      : null;
    return LinkState[standingOf({ ...row, person }, this.clock.now())];
  }

  @ResolveField(() => Int, { description: 'In how many browsers it is open.' })
  async browsers(@Ctx() ctx: Context, @Parent() row: LinkRow): Promise<number> {
    return (await this.reader.sessions(ctx, row.id)).length;
  }

  @ResolveField(() => GraphQLISODateTime, {
    nullable: true,
    description: 'When its page was last looked at; null when it was never opened.',
  })
  async lastOpenedAt(@Ctx() ctx: Context, @Parent() row: LinkRow): Promise<Date | null> {
    const times = (await this.reader.sessions(ctx, row.id)).map(({ lastSeenAt }) => lastSeenAt);
    return times.reduce<Date | null>((last, at) => (last && last > at ? last : at), null);
  }

  @ResolveField(() => String, { description: 'Who made it; a notice may have.' })
  async madeBy(@Ctx() ctx: Context, @Parent() row: LinkRow): Promise<string> {
    const maker = row.createdById ? await this.people.byId(ctx, row.createdById) : null;
    return maker?.name ?? 'a notice';
  }

  @Mutation(() => MakeSignedLinkOutcome, {
    description: 'Makes a link for one recipient and shows its address this one time.',
  })
  @Allow('office')
  makeSignedLink(@Ctx() ctx: Context, @Args('input', INPUT) input: MakeSignedLinkInput) {
    return this.service.make(ctx, input);
  }

  @Mutation(() => RevokeSignedLinkOutcome, {
    description: 'Takes a link back; every browser in which it is open is shut at once.',
  })
  @Allow('office')
  revokeSignedLink(@Ctx() ctx: Context, @Args('input', INPUT) input: RevokeSignedLinkInput) {
    return this.service.revoke(ctx, input);
  }
}

@Resolver(() => SignedLinkMade)
export class SignedLinkMadeResolver {
  constructor(private readonly reader: LinkReader) {}

  @ResolveField(() => SignedLink, { description: 'The link.' })
  signedLink(@Ctx() ctx: Context, @Parent() { signedLinkId }: SignedLinkMade) {
    return this.reader.byId(ctx, signedLinkId);
  }
}

@Resolver(() => SignedLinkChanged)
export class SignedLinkChangedResolver {
  constructor(private readonly reader: LinkReader) {}

  @ResolveField(() => SignedLink, { description: 'The link as it now stands.' })
  signedLink(@Ctx() ctx: Context, @Parent() { signedLinkId }: SignedLinkChanged) {
    return this.reader.byId(ctx, signedLinkId);
  }
}

@Resolver(() => Job)
export class JobSignedLinksResolver {
  constructor(private readonly reader: LinkReader) {}

  @ResolveField(() => [SignedLink], {
    description: 'The signed links to pages of the job, newest first, those that have ended too.',
  })
  signedLinks(@Ctx() ctx: Context, @Parent() job: JobRow) {
    return this.reader.ofJob(ctx, job.id);
  }
}
