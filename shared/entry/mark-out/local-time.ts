/** A wall-clock time without a zone, `YYYY-MM-DDTHH:MM`, as a notice centre writes it down. */
export type LocalTime = string;
/** A day, `YYYY-MM-DD`. */
export type LocalDay = string;

const DAY_MS = 86_400_000;
const TIME = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/;
const DAY = /^\d{4}-\d{2}-\d{2}$/;

/** Midnight of a day as a number of days, the same for every zone. */
export function dayNumber(day: LocalDay): number {
  const ms = DAY.test(day) ? Date.parse(`${day}T00:00:00Z`) : NaN;
  const number = ms / DAY_MS;
  if (!Number.isFinite(number) || dayOf(number) !== day)
    throw new RangeError(`"${day}" is no day of the calendar; write it as 2025-10-10`);
  return number;
}

/** The day of a number of days. */
export const dayOf = (number: number): LocalDay => new Date(number * DAY_MS).toISOString().slice(0, 10);

/** A time taken apart into its day and its minutes since midnight. */
export function takeApart(time: LocalTime): { readonly day: number; readonly minutes: number } {
  const [hours, minutes] = TIME.test(time) ? time.slice(11).split(':').map(Number) : [];
  if (hours === undefined || minutes === undefined || hours > 23 || minutes > 59)
    throw new RangeError(`"${time}" is no time; write it as 2025-10-10T10:00`);
  return { day: dayNumber(time.slice(0, 10)), minutes: hours * 60 + minutes };
}

/** The inverse of {@link takeApart}. */
export function putTogether(day: number, minutes: number): LocalTime {
  const pad = (value: number) => String(value).padStart(2, '0');
  return `${dayOf(day)}T${pad(Math.floor(minutes / 60))}:${pad(minutes % 60)}`;
}

/** Whether a day is a Saturday or a Sunday; day 0, 1970-01-01, was a Thursday. */
export const isWeekend = (day: number): boolean => [0, 6].includes((((day + 4) % 7) + 7) % 7);
