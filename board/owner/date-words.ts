const format = new Intl.DateTimeFormat('en-US', {
  timeZone: 'UTC',
  weekday: 'long',
  month: 'long',
  day: 'numeric',
});

/** "Monday, January 6" of a date such as 2031-01-06, whatever the zone of the device. */
export const dateWords = (date: string): string => format.format(new Date(`${date}T12:00:00Z`));
