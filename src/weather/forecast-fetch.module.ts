import { Module } from '@nestjs/common';
import { FeedRows } from './fetch/feed-rows.js';
import { ForecastFetcher } from './fetch/forecast-fetcher.js';
import { ForecastSources } from './fetch/forecast-sources.js';

/** What a worker needs to fetch forecasts. */
@Module({ providers: [FeedRows, ForecastFetcher, ForecastSources], exports: [ForecastFetcher] })
export class ForecastFetchModule {}
