import { layCable, type LayoutOutcome } from '../../../shared/heating/layout/lay-cable.js';
import type { RandomSite } from '../../../shared/heating/layout/testing/random-site.js';
import { judgeLayout } from './judge-layout.js';

/** What came of an entry: nothing at fault, or what is; and why its own set was refused, where it was. */
export interface Verdict {
  readonly faults: readonly string[];
  readonly refusal: string | null;
}

/**
 * Lays an entry with its set and judges the layout. A set that is refused as too long or too short is no fault when the nearest one
 * that is said to fit is laid and passes in its place; any other refusal is one. `timed` runs the laying of the entry's own set.
 */
export function judgeEntry({ plan, areas, cable }: RandomSite, timed: (lay: () => void) => void): Verdict {
  let outcome: LayoutOutcome | null = null;
  timed(() => (outcome = layCable(plan, areas, cable)));
  const own = outcome as unknown as LayoutOutcome;
  if (own.ok) return { faults: judgeLayout(own.layout), refusal: null };
  const refused = own.code === 'setTooLong' || own.code === 'setTooShort';
  if (!refused || !own.fits) return { faults: [own.message], refusal: null };
  const { shortest, longest } = own.fits;
  const inFeet = longest < cable.length ? Math.floor(longest / 12) : Math.ceil(shortest / 12);
  const nearest = layCable(plan, areas, { ...cable, length: inFeet * 12 });
  const faults = nearest.ok ? judgeLayout(nearest.layout) : [nearest.message];
  return { faults: faults.map((fault) => `${inFeet} ft, said to fit: ${fault}`), refusal: own.message };
}
