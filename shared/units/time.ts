import { quantity, type Quantity } from './quantity.js';

/** An instant as milliseconds since 1970-01-01T00:00Z. */
export type EpochMs = Quantity<'epoch ms'>;
/** An elapsed time in hours. */
export type Hours = Quantity<'h'>;
/** An elapsed or working time in minutes. */
export type Minutes = Quantity<'min'>;
/** An elapsed time in days of 24 hours. */
export type Days = Quantity<'d'>;

/** Milliseconds of one hour. */
export const HOUR_MS = 3_600_000;

/** An instant from a bare number of milliseconds. */
export const epochMs = (value: number): EpochMs => quantity(value, 'epoch ms');
/** Hours from a bare number. */
export const hours = (value: number): Hours => quantity(value, 'h');
/** Minutes from a bare number. */
export const minutes = (value: number): Minutes => quantity(value, 'min');
/** Days from a bare number. */
export const days = (value: number): Days => quantity(value, 'd');

/** 60 minutes to the hour. */
export const hoursToMinutes = (time: Hours): Minutes => minutes(time * 60);
/** 24 hours to the day: a cure does not know a clock change. */
export const daysToMinutes = (time: Days): Minutes => minutes(time * 24 * 60);
/** Hours from one instant to a later one; negative when it is earlier. */
export const hoursBetween = (from: EpochMs, to: EpochMs): Hours => hours((to - from) / HOUR_MS);
/** The instant `time` after `from`. */
export const addHours = (from: EpochMs, time: Hours): EpochMs => epochMs(from + time * HOUR_MS);
/** Rounds a working time up to the planning grid of 15 minutes; more than nothing never becomes nothing. */
export const roundUpToQuarter = (time: Minutes): Minutes =>
  minutes(15 * Math.max(time > 0 ? 1 : 0, Math.ceil((time - 1e-9) / 15)));
