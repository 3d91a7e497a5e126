import { epochMs, type EpochMs } from '../units/time.js';
import { clip, merge, subtract, type Stretch } from './stretch.js';
import type { ClosedStretch, WeatherWindows } from './weather-windows.js';

/** A hold of the forecast that stands. */
export interface StandingHold extends Stretch {
  readonly id: string;
}

/** What decides about the holds of one phase. */
export interface HoldFacts {
  readonly now: EpochMs;
  /** How long from now on work is held. */
  readonly aheadMs: number;
  /** What closes the work, over the whole forecast. */
  readonly windows: WeatherWindows;
  /** When the plan has the work. */
  readonly work: readonly Stretch[];
  readonly standing: readonly StandingHold[];
  /** Time for which a person has lifted a hold of the forecast, and answers. */
  readonly answered: readonly Stretch[];
}

/** What becomes of the holds: opened, kept over a stretch, cut down to what is unknown, or lifted. */
export type HoldMove =
  | { readonly kind: 'open'; readonly stretch: ClosedStretch }
  | { readonly kind: 'keep'; readonly id: string; readonly stretch: ClosedStretch }
  | { readonly kind: 'cut'; readonly id: string; readonly stretch: Stretch }
  /** `into` names the hold that took over its stretch. */
  | { readonly kind: 'lift'; readonly id: string; readonly into: string | null };

/**
 * Holds follow the forecast: one opens where planned work of the time ahead meets a closed stretch, and stays as long as
 * its stretch is closed, though the plan has gone around it; so the same forecast twice changes nothing. What a person
 * answers for is not held again. Where the forecast cannot tell, a hold stays: unknown is never fair.
 */
export function settleHolds({
  now,
  aheadMs,
  windows,
  work,
  standing,
  answered,
}: HoldFacts): readonly HoldMove[] {
  const free = merge(answered);
  const closed = windows.closed.flatMap(({ causes, ...stretch }) =>
    subtract(clip(stretch, { from: now, to: END }), free).map((piece) => ({ ...piece, causes })),
  );
  const owners = new Map<ClosedStretch, string>();
  const moves: HoldMove[] = [];
  for (const hold of [...standing].sort((a, b) => a.from - b.from)) {
    const own = closed.filter((stretch) => meets(stretch, hold));
    const stretch = own.find((one) => !owners.has(one));
    if (stretch) {
      owners.set(stretch, hold.id);
      moves.push({ kind: 'keep', id: hold.id, stretch });
    } else if (own[0]) {
      moves.push({ kind: 'lift', id: hold.id, into: owners.get(own[0]) ?? null });
    } else {
      moves.push(unknownOf(hold, windows, now));
    }
  }
  const ahead = work.flatMap((one) => clip(one, { from: now, to: epochMs(now + aheadMs) }));
  for (const stretch of closed) {
    const held = owners.has(stretch);
    if (!held && [...ahead, ...standing].some((one) => meets(stretch, one)))
      moves.push({ kind: 'open', stretch });
  }
  return moves;
}

const END = epochMs(8.64e15);

const meets = (a: Stretch, b: Stretch): boolean => a.from < b.to && a.to > b.from;

/** A hold whose stretch is no longer closed: lifted, or cut down to the time of which nobody knows. */
function unknownOf(hold: StandingHold, { unknown, unknownAfter }: WeatherWindows, now: EpochMs): HoldMove {
  const silent = unknownAfter === null ? unknown : [...unknown, { from: unknownAfter, to: END }];
  const rest = silent.flatMap((one) => clip(one, hold)).flatMap((one) => clip(one, { from: now, to: END }));
  const [first] = rest;
  const last = rest.at(-1);
  if (!first || !last) return { kind: 'lift', id: hold.id, into: null };
  return { kind: 'cut', id: hold.id, stretch: { from: first.from, to: last.to } };
}
