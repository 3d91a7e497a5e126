import { Module } from '@nestjs/common';

/** The schedule board, the sheet of the day, the journal and the hints. */
@Module({})
export class BoardModule {}
