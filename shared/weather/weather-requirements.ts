import type { Source } from '../entry/source.js';
import { epochMs, type EpochMs } from '../units/time.js';
import type { Forecast } from './forecast.js';
import { hourGrid } from './hour-grid.js';
import { limitHours, worstWithin } from './limit-hours.js';
import { clip, merge, subtract, type Stretch } from './stretch.js';
import type { WeatherCause } from './weather-cause.js';
import { standingLimits, type WeatherOptions } from './weather-windows.js';
import type { WeatherLimit } from './weather-limit.js';

/** A stretch in which the weather asks for something to be done while the work goes on. */
export interface RequiredStretch extends Stretch {
  readonly requirementId: string;
  /** What must be done. */
  readonly text: string;
  readonly source: Source;
  /** The worst hour that asks for it; null while the forecast cannot tell whether it is asked for. */
  readonly cause: WeatherCause | null;
}

/**
 * What must be done from `from` up to `to`, in order of time; of the same begin in the order of the requirements. Where
 * the forecast cannot tell, and past it, the requirement stands with no cause: unknown is never taken for fair.
 */
export function weatherRequirements(
  requirements: readonly WeatherLimit[],
  forecast: Forecast,
  from: EpochMs,
  to: EpochMs,
  options: WeatherOptions = {},
): readonly RequiredStretch[] {
  if (to <= from) return [];
  const grid = hourGrid(forecast);
  const asked = { from, to };
  const found = standingLimits(requirements, options).flatMap((requirement) => {
    const { id: requirementId, text, source } = requirement;
    const about = { requirementId, text, source };
    if (!grid) return [{ ...asked, ...about, cause: null }];
    const read = limitHours(requirement, grid, asked, true);
    const required = merge(read.broken.map(({ stretch }) => stretch));
    const beyond = clip({ from: epochMs(Math.max(from, read.knownUntil)), to }, asked);
    return [
      ...required.map((stretch) => ({ ...stretch, ...about, cause: worstWithin(read, stretch) })),
      ...subtract(merge([...read.unknown, ...beyond]), required).map((stretch) => ({
        ...stretch,
        ...about,
        cause: null,
      })),
    ];
  });
  return found.sort((a, b) => a.from - b.from);
}
