import { inches, type Inches } from '../../units/length.js';

/** What the concrete over a bar meets: earth it is cast against, or the weather. */
export type CoverFace = 'cast-against-earth' | 'weather';

/** Grade of reinforcing bars, ksi. */
export type BarGrade = 40 | 60;

/** The largest bar with the lesser cover in the weather. */
const SMALL_BAR = 5;

/** Least cover of a bar by its number in eighths of an inch. Source: ACI 318. */
export function leastCover(bar: number, face: CoverFace): Inches {
  demandBar(bar);
  if (face === 'cast-against-earth') return inches(3);
  return inches(bar <= SMALL_BAR ? 1.5 : 2);
}

/** Source: IRC R608.5.4(1). */
const LAPS: Readonly<Record<number, Readonly<Record<BarGrade, number>>>> = {
  4: { 40: 20, 60: 30 },
  5: { 40: 25, 60: 38 },
  6: { 40: 30, 60: 45 },
};

/** Least lap of two bars. Throws for a bar that the table does not have: an engineer draws that. */
export function leastLap(bar: number, grade: BarGrade): Inches {
  const laps = LAPS[bar];
  if (!laps)
    throw new RangeError(`the table of laps has #4, #5 and #6, not #${bar}; an engineer draws that lap`);
  return inches(laps[grade]);
}

function demandBar(bar: number): void {
  if (!Number.isInteger(bar) || bar < 3 || bar > 11)
    throw new RangeError(`bars are numbered 3 to 11 by eighths of an inch, got ${bar}`);
}
