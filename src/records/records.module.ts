import { Module } from '@nestjs/common';
import { RecordGatherer } from './gather-record.js';
import { InsideApi } from './inside-api.js';
import { RecordMaker } from './record-maker.js';
import { RecordsRoute } from './records.route.js';
import { PhotosModule } from '../photos/photos.module.js';

/** The closing record of a job. */
@Module({
  imports: [PhotosModule],
  providers: [InsideApi, RecordGatherer, RecordMaker, RecordsRoute],
  exports: [RecordMaker],
})
export class RecordsModule {}
