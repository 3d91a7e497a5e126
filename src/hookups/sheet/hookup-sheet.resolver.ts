import { Parent, Query, ResolveField, Resolver } from '@nestjs/graphql';
import type { Context } from '../../platform/context.js';
import { Ctx } from '../../platform/graphql/request-context.js';
import { demandLink, SheetHead, SheetHeads } from '../../signed-links/signed-links.face.js';
import { Hookup } from '../hookup.model.js';
import { HookupReader } from '../hookup-reader.js';
import { HookupSheet } from './hookup-sheet.model.js';

@Resolver(() => HookupSheet)
export class HookupSheetResolver {
  constructor(
    private readonly reader: HookupReader,
    private readonly heads: SheetHeads,
  ) {}

  @Query(() => HookupSheet, { description: 'The hookups of the job to which a signed link belongs.' })
  hookupSheet(@Ctx() ctx: Context): HookupSheet {
    return { jobId: demandLink(ctx, 'hookup').jobId };
  }

  @ResolveField(() => SheetHead, { description: 'For whom it is, whose it is, and where.' })
  head(@Ctx() ctx: Context): Promise<SheetHead> {
    return this.heads.of(ctx, demandLink(ctx, 'hookup'));
  }

  @ResolveField(() => [Hookup], { description: 'The hookups of the job, one for each heating set.' })
  hookups(@Ctx() ctx: Context, @Parent() { jobId }: HookupSheet) {
    return this.reader.ofJob(ctx, jobId);
  }
}
