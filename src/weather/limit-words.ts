import { LIMIT_UNITS, type Reopening, type WeatherLimit } from '../../shared/weather/weather-limit.js';

/** A limit in words: what it guards against, and where it stops the work. */
export const limitWords = (limit: WeatherLimit): string => words(limit, 'stops');

/** A requirement in words: what must be done, and from where on it is asked for. */
export const requirementWords = (limit: WeatherLimit): string => words(limit, 'asked for');

function words(limit: WeatherLimit, verb: string): string {
  const { text, stop, value, inclusive, measure, dailyMean, and } = limit;
  const unit = LIMIT_UNITS[measure];
  const bound = `${stop === 'below' ? 'under' : 'over'} ${value} ${unit}${inclusive ? ', and at it' : ''}`;
  const mean = dailyMean ? `by the mean of the 24 h ${dailyMean === 'before' ? 'up to' : 'after'} it, ` : '';
  const parts = [`${text}: ${verb} ${mean}${bound}`];
  if (and) parts.push(`with ${and.measure} over ${and.above} ${LIMIT_UNITS[and.measure]}`);
  if (limit.lastingHours) parts.push(`after more than ${limit.lastingHours} h of it`);
  if (limit.aheadHours > 0) parts.push(`also when it comes within ${limit.aheadHours} h after`);
  if (limit.backHours > 0) parts.push(`also for ${limit.backHours} h after it is over`);
  if (limit.turningHours !== undefined)
    parts.push(`only while it moves on, until it turns and is expected back within ${limit.turningHours} h`);
  if (limit.reopen) parts.push(reopeningWords(limit, limit.reopen));
  if (limit.liftedBy.length > 0) parts.push(`lifted by ${limit.liftedBy.join(' or ')}`);
  return parts.join(', ');
}

function reopeningWords(
  { stop, measure }: WeatherLimit,
  { value, inclusive, hours, within }: Reopening,
): string {
  const bound = `${inclusive ? 'at or ' : ''}${stop === 'below' ? 'over' : 'under'} ${value} ${LIMIT_UNITS[measure]}`;
  if (hours === 0) return `until it is ${bound}`;
  return `until ${hours} h ${within > hours ? `of ${within}` : 'in a row'} were ${bound}`;
}
