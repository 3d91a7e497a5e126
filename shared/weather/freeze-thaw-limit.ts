import { published } from '../entry/source.js';
import { under } from './given-limit.js';
import type { WeatherLimit } from './weather-limit.js';

/**
 * A limit that a company may take instead of a plain one, so that a wobble around freezing does not switch the work on
 * and off: it closes at 3 °C and falling, and opens at 1 °C and rising where 3 °C is expected. The source does not say
 * within which time; six hours, the better part of a shift, are common practice.
 */
export const FREEZE_THAW_LIMIT: WeatherLimit = under(published('NHBC Standards 3.2, cold weather working'), {
  id: 'freeze-thaw',
  measure: 'temperature',
  value: 37.4,
  inclusive: true,
  turningHours: 6,
  reopen: { value: 33.8, inclusive: true, hours: 0, within: 0 },
  text: 'Too cold and falling (3 °C); open again from 1 °C and rising where 3 °C is expected',
});
