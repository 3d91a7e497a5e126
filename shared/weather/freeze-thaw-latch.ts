import { published, type Source } from '../entry/source.js';
import type { Celsius } from '../units/temperature.js';

/** Where the latch comes from. */
export const LATCH_SOURCE: Source = published('NHBC Standards 3.2, cold weather working');

/** One look at the thermometer: what it shows, what it showed before, what is expected next. */
export interface LatchReading {
  readonly now: Celsius;
  readonly before: Celsius;
  readonly expected: Celsius;
}

const STOP = 3;
const RESUME = 1;

/**
 * Whether work runs, after a look at the thermometer: it stops at 3 °C and falling, and resumes at 1 °C and rising
 * only where 3 °C is expected. In between it stays as it was, so that a wobble does not switch it.
 */
export function freezeThawLatch(running: boolean, { now, before, expected }: LatchReading): boolean {
  if (running) return !(now <= STOP && now < before);
  return now >= RESUME && now > before && expected >= STOP;
}
