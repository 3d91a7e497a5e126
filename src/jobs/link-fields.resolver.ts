import { Parent, ResolveField, Resolver } from '@nestjs/graphql';
import type { Link as LinkRow } from '../generated/prisma/client.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { Link } from './link.model.js';
import { Phase } from './phase.model.js';
import { PhaseReader } from './phase-reader.js';

@Resolver(() => Link)
export class LinkFieldsResolver {
  constructor(private readonly reader: PhaseReader) {}

  @ResolveField(() => Phase, { description: 'The phase that goes before.' })
  from(@Ctx() ctx: Context, @Parent() link: LinkRow) {
    return this.reader.byId(ctx, link.fromId);
  }

  @ResolveField(() => Phase, { description: 'The phase that waits.' })
  to(@Ctx() ctx: Context, @Parent() link: LinkRow) {
    return this.reader.byId(ctx, link.toId);
  }
}
