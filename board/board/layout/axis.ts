import type { Day } from '../../time/zone-days.js';

/** Working hours of the drawing: the part of a day that gets most of its width. */
const DAWN = 6;
const DUSK = 18;
const NIGHT_SHARE = 0.1;
const DAY_MS = 24 * 3_600_000;

/** Where moments stand across the board. */
export interface Axis {
  readonly days: readonly Day[];
  readonly dayWidth: number;
  readonly width: number;
  readonly start: number;
  readonly end: number;
  /** Distance from the left edge, in pixels; moments outside the days stand at the edges. */
  readonly x: (moment: number) => number;
  /** The moment that stands at a distance from the left edge, in whole milliseconds. */
  readonly momentAt: (x: number) => number;
}

/**
 * Days of equal width, side by side. Within a day the hours from 6 to 18 take four fifths of the width and the night is
 * drawn narrow: work is done by day, and a bar of three hours must be seen.
 */
export function makeAxis(days: readonly Day[], dayWidth: number): Axis {
  const start = days[0]?.start ?? 0;
  const end = days.at(-1)?.end ?? 0;
  const x = (moment: number): number => {
    if (moment <= start) return 0;
    if (moment >= end) return days.length * dayWidth;
    const index = dayIndex(moment, days, start);
    const day = days[index];
    return day ? (index + dayFraction(moment, day)) * dayWidth : 0;
  };
  const momentAt = (distance: number): number => {
    const index = Math.floor(distance / dayWidth);
    const day = days[index];
    if (!day) return distance < 0 ? start : end;
    const hours = hoursAt(distance / dayWidth - index);
    return Math.round(day.start + (hours / 24) * (day.end - day.start));
  };
  return { days, dayWidth, width: days.length * dayWidth, start, end, x, momentAt };
}

/** The day that a moment within the days falls in. A clock change moves midnight by an hour at most, so the guess is a day off at most. */
function dayIndex(moment: number, days: readonly Day[], start: number): number {
  const guess = Math.min(days.length - 1, Math.floor((moment - start) / DAY_MS));
  const day = days[guess];
  if (!day || moment < day.start) return guess - 1;
  return moment >= day.end ? guess + 1 : guess;
}

/** How far across its day a moment is drawn, 0 to 1. */
function dayFraction(moment: number, day: Day): number {
  const hours = ((moment - day.start) / (day.end - day.start)) * 24;
  if (hours < DAWN) return (hours / DAWN) * NIGHT_SHARE;
  if (hours > DUSK) return 1 - ((24 - hours) / (24 - DUSK)) * NIGHT_SHARE;
  return NIGHT_SHARE + ((hours - DAWN) / (DUSK - DAWN)) * (1 - 2 * NIGHT_SHARE);
}

/** The hour of a day of 24 hours that is drawn so far across it, 0 to 1. */
function hoursAt(fraction: number): number {
  if (fraction < NIGHT_SHARE) return (fraction / NIGHT_SHARE) * DAWN;
  if (fraction > 1 - NIGHT_SHARE) return 24 - ((1 - fraction) / NIGHT_SHARE) * (24 - DUSK);
  return DAWN + ((fraction - NIGHT_SHARE) / (1 - 2 * NIGHT_SHARE)) * (DUSK - DAWN);
}
