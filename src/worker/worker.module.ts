import { Module } from '@nestjs/common';
import { NoticesModule } from '../notices/notices.module.js';
import { ImproverModule } from '../planning/improver.module.js';
import { RemindersModule } from '../reminders/reminders.module.js';
import { ForecastFetchModule } from '../weather/forecast-fetch.module.js';
import { Consumer } from './consumer.js';
import { OutboxAnnouncer } from './outbox-announcer.js';
import { Relay } from './relay.js';
import { Sweep } from './sweep.js';
import { TimeKeeper } from './time-keeper.js';
import { Worker } from './worker.js';

/** The worker role; passive until `Worker.start`. */
@Module({
  imports: [NoticesModule, RemindersModule, ImproverModule, ForecastFetchModule],
  providers: [Consumer, OutboxAnnouncer, Relay, Sweep, TimeKeeper, Worker],
  exports: [Worker],
})
export class WorkerModule {}
