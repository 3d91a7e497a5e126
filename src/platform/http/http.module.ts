import { Global, Module } from '@nestjs/common';
import { Chance } from '../chance/chance.js';
import { Clock } from '../clock/clock.js';
import { CONFIG, type Config } from '../config/config.js';
import { HttpGet } from './http-get.js';

/** Gives the one way to read from other servers to every feature. */
@Global()
@Module({
  providers: [
    {
      provide: HttpGet,
      inject: [CONFIG, Chance, Clock],
      useFactory: (config: Config, chance: Chance, clock: Clock) =>
        new HttpGet(
          {
            agent: config.FLAGWAY_FORECAST_AGENT,
            tryMilliseconds: config.FLAGWAY_FETCH_TRY_MILLISECONDS,
            allMilliseconds: config.FLAGWAY_FETCH_ALL_MILLISECONDS,
            pauseMilliseconds: config.FLAGWAY_FETCH_PAUSE_MILLISECONDS,
          },
          chance,
          clock,
        ),
    },
  ],
  exports: [HttpGet],
})
export class HttpModule {}
