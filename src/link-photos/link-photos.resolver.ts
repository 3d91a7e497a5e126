import { ResolveField, Resolver } from '@nestjs/graphql';
import { HookupSheet } from '../hookups/hookups.face.js';
import { OwnerWeek } from '../owner-week/owner-week.face.js';
import type { Context } from '../platform/context.js';
import { Ctx } from '../platform/graphql/request-context.js';
import { demandLink } from '../signed-links/signed-links.face.js';
import { LinkPhoto } from './link-photo.model.js';
import { LinkPhotoReader } from './link-photo-reader.js';

@Resolver(() => OwnerWeek)
export class OwnerPhotosResolver {
  constructor(private readonly reader: LinkPhotoReader) {}

  @ResolveField(() => [LinkPhoto], { description: 'The photos that the office released, newest first.' })
  photos(@Ctx() ctx: Context): Promise<LinkPhoto[]> {
    return this.reader.of(ctx, demandLink(ctx, 'ownerWeek'));
  }
}

@Resolver(() => HookupSheet)
export class HookupSheetPhotosResolver {
  constructor(private readonly reader: LinkPhotoReader) {}

  @ResolveField(() => [LinkPhoto], { description: 'The photos of cable and leads, newest first.' })
  photos(@Ctx() ctx: Context): Promise<LinkPhoto[]> {
    return this.reader.of(ctx, demandLink(ctx, 'hookup'));
  }
}
