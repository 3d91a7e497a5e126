import { Module } from '@nestjs/common';
import { BoardExtrasReader } from './board-extras-reader.js';
import { BoardResolver } from './board.resolver.js';
import { BoardService } from './board.service.js';
import { ChangedResolver } from './changed.resolver.js';
import { JournalReader } from './journal-reader.js';
import { JournalResolver } from './journal.resolver.js';
import { TodayResolver } from './today.resolver.js';
import { TodayService } from './today.service.js';

/** The schedule board, the sheet of the day, the journal and the hints. */
@Module({
  providers: [
    BoardService,
    BoardExtrasReader,
    BoardResolver,
    TodayService,
    TodayResolver,
    JournalReader,
    JournalResolver,
    ChangedResolver,
  ],
})
export class BoardModule {}
