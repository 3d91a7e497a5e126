import { z } from 'zod';

/** Weekdays in the order of the week, as stored. */
export const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;

/** Hours of one day as stored: pairs of opening and closing time. */
export type StoredHours = [string, string][];

/** Weekly hours as stored; a day left out is closed. */
export type StoredWeek = Partial<Record<(typeof WEEKDAYS)[number], StoredHours>>;

const time = z
  .string()
  .regex(/^([01]\d|2[0-3]):[0-5]\d$|^24:00$/, { error: 'must be a time of day as HH:MM, 00:00 to 24:00' });

const range = z.object({ from: time, to: time }).refine(({ from, to }) => from < to, {
  error: 'must close after it opens; give hours past midnight to the next day',
});

/** Open stretches of one day, in order and apart. */
export const dayHours = z
  .array(range)
  .max(6, { error: 'has more than 6 stretches; join those that touch' })
  .refine((hours) => hours.every(({ from }, index) => (hours[index - 1]?.to ?? '00:00') <= from), {
    error: 'must be in order of time and must not overlap',
  })
  .transform((hours): StoredHours => hours.map(({ from, to }) => [from, to]));

const day = z.object({
  day: z.enum(WEEKDAYS, { error: `must be one of ${WEEKDAYS.join(', ')}` }),
  hours: dayHours,
});

/** A week as a caller gives it, checked and in the form it is stored in. */
export const weekHours = z
  .array(day)
  .refine((days) => new Set(days.map((one) => one.day)).size === days.length, {
    error: 'names a weekday twice; give each day once with all its hours',
  })
  .transform((days): StoredWeek => Object.fromEntries(days.map((one) => [one.day, one.hours])));
