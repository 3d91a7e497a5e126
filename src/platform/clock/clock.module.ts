import { Global, Module } from '@nestjs/common';
import { CONFIG, type Config } from '../config/config.js';
import { Clock, FileClock, SystemClock } from './clock.js';

/** Gives the clock to every feature: the machine's, or a file's for rehearsals. */
@Global()
@Module({
  providers: [
    {
      provide: Clock,
      inject: [CONFIG],
      useFactory: (config: Config) =>
        config.FLAGWAY_CLOCK_FILE ? new FileClock(config.FLAGWAY_CLOCK_FILE) : new SystemClock(),
    },
  ],
  exports: [Clock],
})
export class ClockModule {}
