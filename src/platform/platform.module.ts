import { Module } from '@nestjs/common';
import { ChangeModule } from './change/change.module.js';
import { ChanceModule } from './chance/chance.module.js';
import { ClockModule } from './clock/clock.module.js';
import { ConfigModule } from './config/config.module.js';
import { DatabaseModule } from './database/database.module.js';
import { HealthModule } from './health/health.module.js';
import { HintsModule } from './hints/hints.module.js';
import { HttpModule } from './http/http.module.js';
import { QueueModule } from './queue/queue.module.js';

/** What every process of the service stands on. */
@Module({
  imports: [
    ConfigModule,
    ClockModule,
    ChanceModule,
    DatabaseModule,
    ChangeModule,
    HintsModule,
    QueueModule,
    HealthModule,
    HttpModule,
  ],
})
export class PlatformModule {}
