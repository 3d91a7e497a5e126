import { LIMIT_UNITS, type WeatherLimit as CoreLimit } from '../../shared/weather/weather-limit.js';
import { limitWords, requirementWords } from './limit-words.js';
import type { WeatherLimit } from './weather-limits.model.js';

/** A limit as the API shows it. */
export const shownLimit = (limit: CoreLimit): WeatherLimit => shown(limit, limitWords(limit));

/** A requirement as the API shows it. */
export const shownRequirement = (limit: CoreLimit): WeatherLimit => shown(limit, requirementWords(limit));

const shown = (limit: CoreLimit, label: string): WeatherLimit => ({
  id: limit.id,
  label,
  measure: limit.measure,
  value: limit.value,
  unit: LIMIT_UNITS[limit.measure],
  liftedBy: limit.liftedBy,
  mark: limit.source.mark,
  source: limit.source.text,
  body: JSON.stringify(limit),
});
