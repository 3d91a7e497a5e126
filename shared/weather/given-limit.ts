import type { Source } from '../entry/source.js';
import type { WeatherLimit } from './weather-limit.js';

/** What a limit says of itself where it is written down; the rest is not asked. */
export type GivenLimit = Pick<WeatherLimit, 'id' | 'measure' | 'value' | 'text'> & Partial<WeatherLimit>;

const limit = (stop: 'below' | 'above', source: Source, given: GivenLimit): WeatherLimit => ({
  stop,
  inclusive: false,
  aheadHours: 0,
  backHours: 0,
  liftedBy: [],
  source,
  ...given,
});

/** A limit that is broken below its value. */
export const under = (source: Source, given: GivenLimit): WeatherLimit => limit('below', source, given);

/** A limit that is broken above its value. */
export const over = (source: Source, given: GivenLimit): WeatherLimit => limit('above', source, given);
