import { epochMs } from '../../shared/units/time.js';
import type { Stretch } from '../../shared/weather/stretch.js';
import type { WeatherCause as CoreCause } from '../../shared/weather/weather-cause.js';
import { weatherRequirements } from '../../shared/weather/weather-requirements.js';
import { weatherWindows } from '../../shared/weather/weather-windows.js';
import type { Forecast } from '../generated/prisma/client.js';
import type { LimitSetInForce } from './limit-sets.js';
import { coreForecast } from './stored-forecast.js';
import type { WeatherCause, WeatherWindows } from './weather-windows.model.js';

/** What windows are asked for. */
export interface WindowsAsked {
  readonly forecast: Forecast | null;
  readonly set: LimitSetInForce;
  readonly protection: readonly string[];
  readonly from: Date;
  readonly to: Date;
}

/** The windows of one kind of work at a site, as the API shows them. */
export function shownWindows({ forecast, set, protection, from, to }: WindowsAsked): WeatherWindows {
  const begin = epochMs(from.getTime());
  const end = epochMs(to.getTime());
  const core = forecast ? coreForecast(forecast) : { issuedAt: begin, hours: [] };
  const { closed, unknown, unknownAfter } = weatherWindows(set.limits, core, begin, end, { protection });
  const required = weatherRequirements(set.requirements, core, begin, end, { protection });
  return {
    limitKey: set.key,
    name: set.name,
    from,
    to,
    protection,
    issuedAt: forecast?.issuedAt ?? null,
    closed: closed.map(({ causes, ...stretch }) => ({ ...dates(stretch), causes: causes.map(shownCause) })),
    requirements: required.map(({ requirementId, text, source, cause, ...stretch }) => ({
      ...dates(stretch),
      requirementId,
      text,
      known: cause !== null,
      cause: cause && shownCause(cause),
      mark: source.mark,
      source: source.text,
    })),
    unknown: unknown.map(dates),
    unknownAfter: unknownAfter === null ? null : new Date(unknownAfter),
  };
}

/** A cause as the API shows it. */
export function shownCause({ hour, source, ...cause }: CoreCause): WeatherCause {
  return { ...cause, hour: new Date(hour), mark: source.mark, source: source.text };
}

const dates = ({ from, to }: Stretch) => ({ from: new Date(from), to: new Date(to) });
