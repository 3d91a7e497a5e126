import type { Weekday } from '../../shared/schedule/calendar-from-week.js';

/** Weekdays as stored weeks name them, and as the engine's calendars do. */
export const WEEKDAYS: Readonly<Record<string, Weekday>> = {
  mon: 'monday',
  tue: 'tuesday',
  wed: 'wednesday',
  thu: 'thursday',
  fri: 'friday',
  sat: 'saturday',
  sun: 'sunday',
};
