import { minutes, roundUpToQuarter, type Minutes } from '../../units/time.js';
import type { Quantities } from '../quantities/quantity-names.js';
import type { TemplateDuration } from '../template/template.js';

/**
 * How long a phase takes: set-up, and the work of its quantities shared by the crew, rounded up to 15 minutes; or its
 * time by the clock as it stands.
 */
export function phaseMinutes(duration: TemplateDuration, quantities: Quantities): Minutes {
  if (duration.kind === 'elapsed') return minutes(duration.minutes);
  const personMinutes = duration.rates.reduce(
    (sum, rate) => sum + rate.minutesPerUnit * quantities[rate.quantity],
    0,
  );
  return roundUpToQuarter(minutes(duration.setUpMinutes + personMinutes / duration.crewSize));
}
