import type { ForecastSource as SourceKind } from '../../generated/prisma/enums.js';
import type { EpochMs } from '../../../shared/units/time.js';
import type { ForecastFault } from '../../../shared/weather/forecast-fault.js';
import type { Forecast } from '../../../shared/weather/forecast.js';
import type { Validators } from '../../platform/http/http-get.js';

/** Where a site lies, in degrees; north and east are positive. */
export interface Place {
  readonly latitude: number;
  readonly longitude: number;
}

/** What is known from the fetch before. */
export interface Known extends Validators {
  /** Where the source keeps the series of this place; null before it was looked up, or when there is no look-up. */
  readonly address: string | null;
}

/** What a source answered. */
export type SourceAnswer =
  | {
      readonly kind: 'forecast';
      readonly forecast: Forecast;
      readonly notes: readonly ForecastFault[];
      readonly known: Known;
    }
  | { readonly kind: 'unchanged'; readonly known: Known };

/** Where the forecasts of a site come from. */
export interface ForecastSource {
  readonly kind: SourceKind;
  /** How it is called where a forecast says where it comes from. */
  readonly title: string;
  /** Whether its forecasts say when they were issued; otherwise they are as old as their first fetch. */
  readonly saysWhenIssued: boolean;
  /**
   * Gets the forecast of a place; null for a source that people bring.
   *
   * @throws FetchFailure saying why there is none.
   */
  readonly fetch: ((place: Place, known: Known, now: EpochMs) => Promise<SourceAnswer>) | null;
}
