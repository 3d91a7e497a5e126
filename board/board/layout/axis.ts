import type { Day } from '../../time/zone-days.js';

/** Working hours of the drawing: the part of a day that gets most of its width. */
const DAWN = 6;
const DUSK = 18;
const NIGHT_SHARE = 0.1;

/** Where moments stand across the board. */
export interface Axis {
  readonly days: readonly Day[];
  readonly dayWidth: number;
  readonly width: number;
  readonly start: number;
  readonly end: number;
  /** Distance from the left edge, in pixels; moments outside the days stand at the edges. */
  readonly x: (moment: number) => number;
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
    const index = days.findIndex((day) => moment < day.end);
    const day = days[index];
    return day ? (index + dayFraction(moment, day)) * dayWidth : 0;
  };
  return { days, dayWidth, width: days.length * dayWidth, start, end, x };
}

/** How far across its day a moment is drawn, 0 to 1. */
function dayFraction(moment: number, day: Day): number {
  const hours = ((moment - day.start) / (day.end - day.start)) * 24;
  if (hours < DAWN) return (hours / DAWN) * NIGHT_SHARE;
  if (hours > DUSK) return 1 - ((24 - hours) / (24 - DUSK)) * NIGHT_SHARE;
  return NIGHT_SHARE + ((hours - DAWN) / (DUSK - DAWN)) * (1 - 2 * NIGHT_SHARE);
}
