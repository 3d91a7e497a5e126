import { published, type Source } from '../../entry/source.js';
import { days, type Days } from '../../units/time.js';

/** What a placement carries, and what reaches it, while it is young. */
export type Service = 'no-load' | 'no-load-exposed' | 'partial-load-exposed' | 'full-load';

/** Where the days come from. */
export const PROTECTION_DAYS_SOURCE: Source = published('ACI 306.1-90 as restated by Beall 2004, fig. 3-38');

const DAYS: Readonly<Record<Exclude<Service, 'full-load'>, readonly [number, number]>> = {
  'no-load': [2, 1],
  'no-load-exposed': [3, 2],
  'partial-load-exposed': [6, 4],
};

/** What is asked of a full load in place of days. */
export interface ByStrength {
  readonly by: 'strength';
}

/**
 * Days of protection: 2, 3 exposed, 6 partly loaded and exposed; 1, 2, 4 when accelerated. A full load goes by strength
 * in place, whatever the days.
 */
export function protectionDays(service: Service, accelerated: boolean): Days | ByStrength {
  if (service === 'full-load') return { by: 'strength' };
  return days(DAYS[service][accelerated ? 1 : 0]);
}

/** Days of protection against freezing alone: 3, accelerated 2. */
export const freezingProtectionDays = (accelerated: boolean): Days => days(accelerated ? 2 : 3);
