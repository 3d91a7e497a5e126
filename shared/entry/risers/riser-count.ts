import { inches, type Inches } from '../../units/length.js';
import { HIGHEST_RISER } from '../rules/riser-height.js';
import { HAIR } from '../rules/spread.js';

/** Equal risers over a height. */
export interface EqualRisers {
  readonly count: number;
  readonly riser: Inches;
}

/** The fewest equal risers over a finished height: 31 in are 4 of 7¾, 31.01 in are 5. A level entry has none. */
export function equalRisers(rise: Inches, highest: Inches = HIGHEST_RISER): EqualRisers {
  if (rise < 0) throw new RangeError(`the landing cannot lie below the walk, got ${rise} in; swap the two`);
  if (!(highest > 0)) throw new RangeError(`the highest riser must be more than 0 in, got ${highest}`);
  const count = Math.max(0, Math.ceil(rise / highest - HAIR));
  return { count, riser: inches(count === 0 ? 0 : rise / count) };
}
