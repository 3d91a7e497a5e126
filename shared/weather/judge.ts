import type { Answer } from './answer.js';
import { dailyMeans } from './daily-means.js';
import { exceedsWith } from './exceeds.js';
import type { HourGrid } from './hour-grid.js';
import { hourValue } from './hour-value.js';
import { lasting } from './lasting.js';
import { latch } from './latch.js';
import { reopenings } from './reopenings.js';
import type { WeatherLimit } from './weather-limit.js';

/** Hour by hour: whether the limit is broken there, and the value it was judged by. */
export interface Judged {
  readonly broken: readonly Answer[];
  readonly values: readonly (number | null)[];
}

/**
 * Judges every hour of a forecast by a limit, before hours ahead and back are regarded. With `cautious`, a second value
 * that nobody knows counts as reached, as for what must be done.
 */
export function judge(limit: WeatherLimit, { hours }: HourGrid, cautious = false): Judged {
  const read = hours.map((hour) => hour && hourValue(limit.measure, hour));
  const values = limit.dailyMean ? dailyMeans(read, limit.dailyMean) : read;
  const plain = values.map((value, i): Answer => {
    const found = exceedsWith(limit, value, hours[i]!);
    const broken = cautious && found === 'unknown' && value !== null ? true : found;
    return limit.turningHours === undefined ? broken : whileMoving(limit, broken, values[i - 1], value);
  });
  const reopens = reopenings(limit, read);
  return { values, broken: latch(lasting(plain, reopens, limit.lastingHours ?? 0), reopens) };
}

/** A limit that follows the turn is broken only while the value moves on beyond it. */
function whileMoving(
  { stop }: WeatherLimit,
  broken: Answer,
  before: number | null | undefined,
  now: number | null,
): Answer {
  if (broken === false || now === null) return broken;
  if (before === null || before === undefined) return 'unknown';
  return (stop === 'below' ? now < before : now > before) ? broken : false;
}
