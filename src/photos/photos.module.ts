import { Module } from '@nestjs/common';
import { PictureFiles } from './http/picture-files.js';
import { PhotosRoute } from './http/photos.route.js';
import { PhotoReader } from './photo-reader.js';
import {
  JobPhotosResolver,
  PhasePhotosResolver,
  PhotoChangedResolver,
  PhotoResolver,
} from './photos.resolver.js';
import { PhotosService } from './photos.service.js';
import { PictureMaker } from './pictures/picture-maker.js';

/** Photos of phases: taken in, shown, released to the owner of the house. */
@Module({
  providers: [
    JobPhotosResolver,
    PhasePhotosResolver,
    PhotoChangedResolver,
    PhotoReader,
    PhotoResolver,
    PhotosRoute,
    PhotosService,
    PictureFiles,
    PictureMaker,
  ],
  exports: [PhotoReader, PictureFiles],
})
export class PhotosModule {}
