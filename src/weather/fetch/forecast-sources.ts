import { Inject, Injectable } from '@nestjs/common';
import { ForecastSource as SourceKind } from '../../generated/prisma/enums.js';
import { CONFIG, type Config } from '../../platform/config/config.js';
import { HttpGet } from '../../platform/http/http-get.js';
import type { ForecastSource } from './forecast-source.js';
import { hourlySource } from './hourly-source.js';
import { nationalSource } from './national-source.js';
import { uploadedSource } from './uploaded-source.js';

/** The source of each kind; a new one is a new file and a row here. */
@Injectable()
export class ForecastSources {
  private readonly sources: readonly ForecastSource[];

  /** @throws Error naming every kind without exactly one source. */
  constructor(http: HttpGet, @Inject(CONFIG) config: Config) {
    this.sources = [
      uploadedSource,
      nationalSource(http, config.FLAGWAY_FORECAST_NATIONAL_URL),
      hourlySource(http, config.FLAGWAY_FORECAST_HOURLY_URL),
    ];
    demandOneSourceEach(this.sources);
  }

  of(kind: SourceKind): ForecastSource {
    const found = this.sources.find((source) => source.kind === kind);
    if (!found) throw new Error(`There is no forecast source "${kind}"`);
    return found;
  }
}

/** @throws Error naming every kind of forecast source without exactly one source. */
export function demandOneSourceEach(sources: readonly Pick<ForecastSource, 'kind'>[]): void {
  const faults = Object.values(SourceKind)
    .map((kind) => [kind, sources.filter((source) => source.kind === kind).length] as const)
    .filter(([, count]) => count !== 1)
    .map(([kind, count]) => `the kind "${kind}" has ${count} sources instead of one`);
  if (faults.length > 0) throw new Error(`Forecasts cannot be fetched: ${faults.join('; ')}`);
}
