import type { Values } from './field.js';

/** Weekdays as the service names them, with their short names for people. */
export const WEEKDAYS = [
  ['mon', 'Mon'],
  ['tue', 'Tue'],
  ['wed', 'Wed'],
  ['thu', 'Thu'],
  ['fri', 'Fri'],
  ['sat', 'Sat'],
  ['sun', 'Sun'],
] as const;

/** Monday to Friday between two times. */
export const workWeek = (from: string, to: string): Values => ({
  ...Object.fromEntries(WEEKDAYS.map(([day], index) => [day, index < 5 ? 'yes' : ''])),
  from,
  to,
});

/** Weekly hours as the service takes them: the ticked days, each from one time to another. */
export const weekInput = (values: Values) =>
  WEEKDAYS.filter(([day]) => values[day] === 'yes').map(([day]) => ({
    day,
    hours: [{ from: values['from'] ?? '', to: values['to'] ?? '' }],
  }));
