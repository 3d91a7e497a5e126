import { Inject, Injectable } from '@nestjs/common';
import type { ForecastFeed, Prisma, Site } from '../../generated/prisma/client.js';
import { Chance } from '../../platform/chance/chance.js';
import { Clock } from '../../platform/clock/clock.js';
import { CONFIG, type Config } from '../../platform/config/config.js';
import { Database } from '../../platform/database/database.js';
import { FetchFailure } from '../../platform/http/fetch-failure.js';
import type { Known } from './forecast-source.js';
import { afterAnswer, afterFailure } from './next-fetch.js';

/** One turn of a feed: what was done for it counts only while nobody has set the next turn. */
export type Turn = Pick<ForecastFeed, 'siteId' | 'generation'>;

/** Reads and writes how the fetching of forecasts stands. */
@Injectable()
export class FeedRows {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly chance: Chance,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** The feed whose turn it is, with its site; null when the turn is over. */
  due(siteId: string, generation: number): Promise<(ForecastFeed & { site: Site }) | null> {
    return this.database.forecastFeed.findFirst({ where: { siteId, generation }, include: { site: true } });
  }

  /** What a feed becomes after a good answer. */
  answered(known: Known): Prisma.ForecastFeedUpdateManyMutationInput {
    const now = this.clock.now();
    return {
      ...known,
      fetchedAt: now,
      failures: 0,
      failedAt: null,
      failure: null,
      ...this.next(afterAnswer(now, this.config.FLAGWAY_FORECAST_MINUTES, this.chance.next())),
    };
  }

  /** Marks that nothing has changed. */
  async unchanged({ siteId, generation }: Turn, known: Known): Promise<void> {
    await this.database.forecastFeed.updateMany({
      where: { siteId, generation },
      data: this.answered(known),
    });
  }

  /** Marks a failure; what is known of the answer before it stays, and so does the forecast in use with its age. */
  async failed(
    { siteId, generation, failures }: Turn & Pick<ForecastFeed, 'failures'>,
    failure: FetchFailure,
  ) {
    const now = this.clock.now();
    const again = afterFailure(now, failures + 1, failure.waitMilliseconds, this.chance.next());
    await this.database.forecastFeed.updateMany({
      where: { siteId, generation },
      data: {
        failures: { increment: 1 },
        failedAt: now,
        failure: failure.message,
        ...this.next(again),
      },
    });
  }

  private next(dueAt: Date): Prisma.ForecastFeedUpdateManyMutationInput {
    return { dueAt, queuedAt: null, generation: { increment: 1 } };
  }
}
