import { closestSpacing, type LayoutCable } from './cable.js';
import type { Layer } from './layer.js';

/** Label lengths that surfaces take within the limits of a cable, in. */
export interface FitRange {
  readonly shortest: number;
  readonly longest: number;
}

/** A hole this narrow between two ranges is none, in. */
const HAIR = 0.01;

/** All label lengths that any of some layers takes, as ranges with nothing that fits between them, the shortest first. */
export function fitRanges(layers: readonly Layer[]): FitRange[] {
  const spreads = layers.flatMap((layer) => layer.spreads()).sort((p, q) => p.least - q.least);
  const ranges: { shortest: number; longest: number }[] = [];
  for (const { least, full } of spreads) {
    const last = ranges[ranges.length - 1];
    if (last && least <= last.longest + HAIR) last.longest = Math.max(last.longest, full);
    else ranges.push({ shortest: least, longest: full });
  }
  return ranges;
}

/** A set that does not fit: in which way, by how much and what would, in words; and the nearest lengths that do. */
interface Misfit {
  readonly code: 'setTooLong' | 'setTooShort';
  readonly message: string;
  readonly fits: FitRange | null;
}

/** Says by how much a set does not fit, and what would: what is longer than it, or else what is shorter. */
export function sayMisfit(cable: LayoutCable, ranges: readonly FitRange[]): Misfit {
  // Sets are labelled in whole feet.
  const labelled = ranges.filter(({ shortest, longest }) => Math.ceil(shortest / 12) * 12 <= longest);
  const above = labelled.find(({ longest }) => longest >= cable.length) ?? null;
  const below = labelled.filter(({ longest }) => longest < cable.length).pop() ?? null;
  if (above) {
    const also = below ? `, and so does one of ${range(below)}` : '';
    return {
      code: 'setTooShort',
      message: `the set is ${feet(Math.ceil((above.shortest - cable.length) / 12))} too short to leave no gap over ${cable.greatestSpacing} in; a set of ${range(above)} fits${also}; or heat less surface`,
      fits: above,
    };
  }
  const by = below ? `${feet(Math.ceil((cable.length - below.longest) / 12))} ` : '';
  const fits = below ? `a set of ${range(below)} fits, or heat` : 'heat';
  return {
    code: 'setTooLong',
    message: `the set is ${by}too long at the closest spacing of ${closestSpacing(cable)} in; ${fits} more surface; never cut the heating cable`,
    fits: below,
  };
}

const feet = (count: number): string => `${count} ft`;

function range({ shortest, longest }: FitRange): string {
  const [low, high] = [Math.ceil(shortest / 12), Math.floor(longest / 12)];
  return low === high ? feet(low) : `${feet(low)} to ${feet(high)}`;
}
