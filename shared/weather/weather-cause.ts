import type { Source } from '../entry/source.js';
import type { EpochMs } from '../units/time.js';
import { isBeyond } from './exceeds.js';
import { LIMIT_UNITS, type WeatherLimit } from './weather-limit.js';

/** Why a stretch is closed, or what asks for something: the limit, and the worst hour of those that break it. */
export interface WeatherCause {
  readonly limitId: string;
  readonly label: string;
  readonly value: number;
  readonly limit: number;
  readonly unit: string;
  /** Start of the hour with that value. */
  readonly hour: EpochMs;
  readonly text: string;
  readonly source: Source;
}

/** The cause that one hour with its value is. */
export function weatherCause(limit: WeatherLimit, hour: EpochMs, value: number): WeatherCause {
  const unit = LIMIT_UNITS[limit.measure];
  const shown = `${limit.dailyMean ? 'daily mean ' : ''}${rounded(limit, value)} ${unit}`;
  return {
    limitId: limit.id,
    label: limit.text,
    value,
    limit: limit.value,
    unit,
    hour,
    text: `${limit.text}: ${shown}, ${compared(limit, value)}`,
    source: limit.source,
  };
}

const rounded = ({ measure }: WeatherLimit, value: number): number => {
  const scale = measure === 'evaporation' ? 1000 : 100;
  return Math.round(value * scale) / scale;
};

function compared(limit: WeatherLimit, value: number): string {
  const unit = LIMIT_UNITS[limit.measure];
  const below = limit.stop === 'below';
  if (isBeyond(limit, value))
    return value === limit.value
      ? `at ${limit.value} ${unit}`
      : `${below ? 'under' : 'over'} ${limit.value} ${unit}`;
  if (!limit.reopen) return `closed since it was ${below ? 'under' : 'over'} ${limit.value} ${unit}`;
  const { value: bound, hours } = limit.reopen;
  return `closed until ${below ? 'over' : 'under'} ${bound} ${unit}${hours > 0 ? ` for ${hours} h` : ''}`;
}

/** The worse of two causes of one limit; of equal ones the earlier. */
export function worseOf(limit: WeatherLimit, a: WeatherCause, b: WeatherCause): WeatherCause {
  if (a.value === b.value) return a.hour <= b.hour ? a : b;
  return (limit.stop === 'below') === a.value < b.value ? a : b;
}
