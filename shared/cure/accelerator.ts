import { hours, type Hours } from '../units/time.js';
import type { Source } from '../entry/source.js';

/** Where the effect of an accelerator comes from. */
export const ACCELERATOR_SOURCE: Source = {
  mark: 'C',
  text: 'taken from the protection days of ACI 306.1-90 (2, 3, 6 without; 1, 2, 4 with): the least of their ratios, and of their gains',
};

/** How many times as fast an accelerated mixture gains its early strength: 6 days over 4. */
export const ACCELERATOR_SPEED = 1.5;

/** The most that an accelerator can gain, h at 20 °C: the least that the table gives. */
const MOST_GAIN = 24;

/** Age that counts in an accelerated mixture: half as much again, and no more than a day ahead. */
export const acceleratedAge = (age: Hours): Hours =>
  hours(age + Math.min(age * (ACCELERATOR_SPEED - 1), MOST_GAIN));

/** Inverse of {@link acceleratedAge}. */
export const plainAge = (accelerated: Hours): Hours =>
  hours(Math.max(accelerated / ACCELERATOR_SPEED, accelerated - MOST_GAIN));
