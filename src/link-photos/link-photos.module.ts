import { Module } from '@nestjs/common';
import { PhotosModule } from '../photos/photos.module.js';
import { LinkPhotoReader } from './link-photo-reader.js';
import { HookupSheetPhotosResolver, OwnerPhotosResolver } from './link-photos.resolver.js';
import { LinkPhotosRoute } from './link-photos.route.js';

/** The photos on the pages that signed links open. */
@Module({
  imports: [PhotosModule],
  providers: [HookupSheetPhotosResolver, LinkPhotoReader, LinkPhotosRoute, OwnerPhotosResolver],
})
export class LinkPhotosModule {}
