import type { Crew, Link, Phase, PlanInput } from '../../../shared/schedule/model.js';
import { candidatesOf, needsCrew } from './candidates.js';
import type { DaySheet } from './day-sheet.js';
import { earliestBy, gateOf, pointOf } from './lag.js';
import type { Store } from './store.js';

/** Where a phase sits. */
export interface Place {
  readonly start: number;
  readonly finish: number;
  readonly crewId: string | null;
}

/** No place, and the pool that never has enough again where that is why. */
export interface NoPlace {
  readonly poolId: string | null;
}

/** What stands already. */
export interface Standing {
  readonly input: PlanInput;
  readonly sheet: DaySheet;
  readonly store: Store;
  /** Slots in which a crew is taken, by crew. */
  readonly busy: ReadonlyMap<string, Uint8Array>;
  readonly linksTo: ReadonlyMap<string, readonly Link[]>;
  placeOf(id: string): Place;
}

/** The earliest start over all crews; of equal ones the earliest finish, then the crew it had before, then the first by id. */
export function tryCrews(standing: Standing, phase: Phase, notBefore: number): Place | NoPlace {
  const crews = needsCrew(phase) ? candidatesOf(standing.input, phase) : [null];
  const had = phase.previous?.crewId;
  let best: Place | undefined;
  let failure: NoPlace | undefined;
  for (const crew of crews) {
    const found = trySlots(standing, phase, crew, notBefore, best?.start ?? Infinity);
    if (!('start' in found)) failure ??= found;
    else if (!best || found.start < best.start || found.finish < best.finish) best = found;
    else if (found.finish === best.finish && found.crewId === had) best = found;
  }
  return best ?? failure!;
}

/** Tries one slot after the other, up to `latest`. */
function trySlots(
  standing: Standing,
  phase: Phase,
  crew: Crew | null,
  notBefore: number,
  latest: number,
): Place | NoPlace {
  const { input, sheet, store } = standing;
  const calendarId = crew ? crew.calendarId : phase.calendarId;
  const busy = crew && standing.busy.get(crew.id)!;
  const hours = hoursOf(standing, phase, calendarId);
  const bounds = standing.linksTo.get(phase.id)!.map((link) => {
    const from = pointOf(link, 'from', standing.placeOf(link.from));
    return { link, at: earliestBy(link, from, calendarId, sheet, input.horizon) };
  });
  if (bounds.some(({ at }) => at === Infinity)) return { poolId: null };
  const first = Math.max(input.now, notBefore, gateOf(phase));
  for (let start = first; start <= Math.min(latest, input.horizon); start++) {
    if (busy?.[start] === 1) continue;
    const finish = finishFrom(hours, phase, start);
    if (finish === null) continue;
    if (finish > input.horizon) break;
    if (bounds.some(({ link, at }) => pointOf(link, 'to', { start, finish }) < at)) continue;
    if (busy?.subarray(start, finish).includes(1)) continue;
    const lack = store.lackFor(phase, start, finish);
    if (!lack) return { start, finish, crewId: crew?.id ?? null };
    if (lack.to === Infinity) return { poolId: lack.poolId };
  }
  return { poolId: null };
}

/** The hours that one phase meets. */
interface Hours {
  readonly isOpen: (t: number) => boolean;
  readonly isFair: (t: number) => boolean;
  readonly isWorkable: (t: number) => boolean;
  readonly end: number;
}

function hoursOf({ input, sheet }: Standing, phase: Phase, calendarId: string | undefined): Hours {
  const isOpen = sheet.openBy(calendarId);
  const isFair = sheet.fairFor(phase);
  return { isOpen, isFair, isWorkable: (t) => isOpen(t) && isFair(t), end: input.horizon };
}

/** When it would finish from a start; null where it cannot start. */
function finishFrom(hours: Hours, { duration }: Phase, start: number): number | null {
  const { isOpen, isFair, isWorkable, end } = hours;
  if (duration.slots === 0) return isWorkable(start) || isWorkable(start - 1) ? start : null;
  if (!isOpen(start) || !isFair(start)) return null;
  const straight = start + duration.slots;
  if (duration.kind === 'elapsed') {
    for (let t = start; t < straight; t++) if (!isFair(t)) return null;
    return straight;
  }
  if (duration.mode === 'continuous') {
    for (let t = start; t < straight; t++) if (!isWorkable(t)) return null;
    return straight;
  }
  let left = duration.slots;
  for (let t = start; t < end; t++) if (isWorkable(t) && --left === 0) return t + 1;
  return null;
}
