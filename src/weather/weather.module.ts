import { Global, Module, type OnModuleInit } from '@nestjs/common';
import { ChangeSteps } from '../platform/change/change-steps.js';
import { ChooseSourceService } from './feed/choose-source.service.js';
import { FeedReader } from './feed/feed-reader.js';
import { ForecastSourceChosenResolver, SiteFeedResolver } from './feed/feed.resolver.js';
import { ForecastFileRoute } from './forecast-file.route.js';
import { ForecastReceivedResolver, ForecastResolver } from './forecast.resolver.js';
import { ForecastsService } from './forecasts.service.js';
import { holdsStep } from './holds/holds.step.js';
import { SiteWeatherResolver } from './site-weather.resolver.js';
import { WeatherHoldChangedResolver, WeatherHoldResolver } from './weather-hold.resolver.js';
import { WeatherHoldsService } from './weather-holds.service.js';
import { WeatherLimitsResolver, WeatherLimitsSavedResolver } from './weather-limits.resolver.js';
import { WeatherLimitsService } from './weather-limits.service.js';
import { WeatherReader } from './weather-reader.js';
import { PhaseWindowsResolver, SiteWindowsResolver } from './weather-windows.resolver.js';
import { WindowsReader } from './windows-reader.js';

/** Forecasts of sites, the limits they are held against, and weather holds. */
@Global()
@Module({
  providers: [
    WeatherReader,
    ForecastsService,
    ForecastResolver,
    ForecastReceivedResolver,
    ForecastFileRoute,
    SiteWeatherResolver,
    FeedReader,
    ChooseSourceService,
    SiteFeedResolver,
    ForecastSourceChosenResolver,
    WeatherHoldsService,
    WeatherHoldResolver,
    WeatherHoldChangedResolver,
    WeatherLimitsService,
    WeatherLimitsResolver,
    WeatherLimitsSavedResolver,
    WindowsReader,
    SiteWindowsResolver,
    PhaseWindowsResolver,
  ],
  exports: [WeatherReader],
})
export class WeatherModule implements OnModuleInit {
  constructor(private readonly steps: ChangeSteps) {}

  onModuleInit(): void {
    this.steps.register('weatherHolds', holdsStep);
  }
}
