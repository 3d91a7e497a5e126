import { Injectable } from '@nestjs/common';
import type { ForecastFeed, Site } from '../../generated/prisma/client.js';
import { epochMs } from '../../../shared/units/time.js';
import { ChangeRunner } from '../../platform/change/change-runner.js';
import { Clock } from '../../platform/clock/clock.js';
import { contextOf } from '../../platform/context.js';
import { FetchFailure } from '../../platform/http/fetch-failure.js';
import { HttpGet } from '../../platform/http/http-get.js';
import { log } from '../../platform/log.js';
import { FeedRows } from './feed-rows.js';
import type { ForecastSource, SourceAnswer } from './forecast-source.js';
import { ForecastSources } from './forecast-sources.js';
import { takeFetched } from './take-fetched.js';

type DueFeed = ForecastFeed & { readonly site: Site };

/** Fetches the forecast of one site at a time; what comes of it stands in the site's feed. */
@Injectable()
export class ForecastFetcher {
  private closing = false;

  constructor(
    private readonly rows: FeedRows,
    private readonly sources: ForecastSources,
    private readonly runner: ChangeRunner,
    private readonly clock: Clock,
    private readonly http: HttpGet,
  ) {}

  /**
   * Fetches the forecast of a site and uses it; does nothing when the turn is over. A failure of the source is written
   * down with the next try, and is none of the queue's.
   *
   * @throws Error when the database does not answer, or the worker is closing: the turn is then still open.
   */
  async fetch(siteId: string, generation: number): Promise<void> {
    const feed = await this.rows.due(siteId, generation);
    if (!feed) return;
    try {
      await this.fetchDue(feed);
    } catch (error) {
      if (this.closing) throw error;
      if (!(error instanceof FetchFailure))
        log('error', 'A fetched forecast could not be used', {
          siteId,
          error: error instanceof Error ? (error.stack ?? error.message) : String(error),
        });
      await this.rows.failed(feed, error instanceof FetchFailure ? error : UNEXPECTED);
    }
  }

  /** Breaks off what is being fetched; another worker takes it up. */
  close(): void {
    this.closing = true;
    this.http.close();
  }

  private async fetchDue(feed: DueFeed): Promise<void> {
    const source = this.sources.of(feed.site.forecastSource);
    if (source.fetch === null) return;
    const { latitude, longitude } = feed.site;
    if (latitude === null || longitude === null)
      throw new FetchFailure('Nobody has said where the site lies; give its latitude and longitude.');
    const { address, etag, lastModified } = feed;
    const now = epochMs(this.clock.now().getTime());
    const answer = await source.fetch({ latitude, longitude }, { address, etag, lastModified }, now);
    if (answer.kind === 'unchanged') await this.rows.unchanged(feed, answer.known);
    else await this.use(feed, source, answer);
  }

  private async use(
    { site, generation }: DueFeed,
    source: ForecastSource,
    answer: SourceAnswer & { kind: 'forecast' },
  ): Promise<void> {
    const { companyId } = site;
    const ctx = contextOf({ companyId, personId: '', role: 'office', name: 'the forecast source' });
    await this.runner.runInternal(ctx, async (change) => {
      const turn = { siteId: site.id, generation };
      const feed = await change.tx.forecastFeed.findFirst({ where: turn });
      if (!feed) return;
      const forecastId = await takeFetched(change, feed, source, answer);
      await change.tx.forecastFeed.updateMany({
        where: turn,
        data: { ...this.rows.answered(answer.known), forecastId },
      });
    });
  }
}

const UNEXPECTED = new FetchFailure(
  'The forecast was fetched but could not be used; the log of the worker says why. It is tried again.',
);
