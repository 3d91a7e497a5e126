import { LIMIT_UNITS, type WeatherLimit } from '../../shared/weather/weather-limit.js';

/** A limit in words: what it guards against, and where it stops the work. */
export function limitWords(limit: WeatherLimit): string {
  const { text, stop, value, inclusive, measure, aheadHours, liftedBy, and } = limit;
  const bound = `stops ${stop === 'below' ? 'under' : 'over'} ${value} ${LIMIT_UNITS[measure]}${inclusive ? ', and at it' : ''}`;
  const parts = [`${text}: ${bound}`];
  if (and) parts.push(`with ${and.measure} over ${and.above} ${LIMIT_UNITS[and.measure]}`);
  if (aheadHours > 0) parts.push(`also when it comes within ${aheadHours} h after`);
  if (liftedBy.length > 0) parts.push(`lifted by ${liftedBy.join(' or ')}`);
  return parts.join(', ');
}
