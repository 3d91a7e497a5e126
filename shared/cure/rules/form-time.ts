import type { Finding } from '../../entry/rules/finding.js';
import { published } from '../../entry/source.js';
import { fahrenheit, type Fahrenheit } from '../../units/temperature.js';
import { hours, type Hours } from '../../units/time.js';

/** Some hours at one temperature of the air around a form. */
export interface FormHours {
  readonly hours: Hours;
  readonly air: Fahrenheit;
}

const COUNTS_ABOVE = fahrenheit(50);

/** Hours that count for a form: those above 50 °F, one after another or not. */
export const countedFormHours = (history: readonly FormHours[]): Hours =>
  hours(history.reduce((sum, part) => sum + (part.air > COUNTS_ABOVE ? part.hours : 0), 0));

/** Forms stay for a number of hours above 50 °F: 12 for walls and sides. Colder hours do not count. */
export function formTime(history: readonly FormHours[], needed: Hours = hours(12)): Finding {
  const counted = countedFormHours(history);
  const ok = counted >= needed;
  return {
    rule: 'form-time',
    ok,
    measured: `${counted} h above 50 °F`,
    limit: `at least ${needed} h above 50 °F`,
    source: published('ACI 347 as restated in Concrete Construction'),
    text: ok ? 'Forms may come off' : `Leave the forms for ${needed - counted} h more above 50 °F`,
    caution: 'Forms that carry weight come off by strength and on the engineer’s word.',
  };
}
