import type { Conflict } from '../../shared/schedule/model.js';
import { moveChanges } from '../../shared/moves/move-phase.js';
import { shiftsBetween, type WhatIf } from '../../shared/schedule/what-if/what-if.js';
import type { BoardData } from '../board/layout/rows.js';
import { type JobShift, shiftsFound } from '../planning/shifts.js';
import type { PlannedHere } from '../planning/use-planner.js';
import { momentOf, nearestSlot } from './slots.js';
import type { Tried } from './tried.js';
import { conflictWords } from './words/conflict-words.js';

/** From when to when a phase would be, in milliseconds since 1970. */
export interface Place {
  readonly from: number;
  readonly to: number;
  readonly crewId: string | null;
}

/** A promise that would no longer be kept. */
export interface BrokenPromise {
  readonly phaseId: string;
  readonly name: string;
  readonly crew: string | null;
}

/** What a tried move would do. */
export interface Preview {
  readonly tried: Tried;
  /** Where the phase itself would be; null when it would have no place. */
  readonly lands: Place | null;
  /** Every phase that would be elsewhere; null without a place. */
  readonly places: ReadonlyMap<string, Place | null>;
  /** Jobs whose end would change. */
  readonly ends: readonly JobShift[];
  readonly broken: readonly BrokenPromise[];
  /** What would come up against something, in words. */
  readonly conflicts: readonly string[];
}

/**
 * Plans a tried move with the engine in the page.
 *
 * @returns null when the phase is no longer planned or has begun: the plan may have gone on meanwhile.
 */
export function previewMove(here: PlannedHere, board: BoardData, tried: Tried): Preview | null {
  const planner = here.planner();
  const { phaseId, way, at, crewId } = tried;
  const move = { phaseId, way, at: nearestSlot(at, here.scale), crewId: crewId ?? undefined };
  let found: WhatIf;
  try {
    found = shiftsBetween(planner.plan, planner.preview(moveChanges(planner.input, move)));
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
  return readPreview(found, here, board, tried);
}

function readPreview(found: WhatIf, { scale, input }: PlannedHere, board: BoardData, tried: Tried): Preview {
  const places = new Map(
    found.phases.map(({ phaseId, after: { start, finish, crewId } }) => [
      phaseId,
      start === null || finish === null
        ? null
        : { from: momentOf(start, scale), to: momentOf(finish, scale), crewId },
    ]),
  );
  const shown = new Map(board.phases.map((phase) => [phase.id, phase]));
  const nameOf = (id: string): string => {
    const phase = shown.get(id);
    return phase ? `${phase.job.number} ${phase.name}` : 'a phase not shown';
  };
  const stays = found.plan.phases.find(({ id }) => id === tried.phaseId);
  const lands =
    stays?.start != null && stays.finish !== null
      ? { from: momentOf(stays.start, scale), to: momentOf(stays.finish, scale), crewId: stays.crewId }
      : null;
  const broken = input.phases
    .filter(({ id, commitment }) => commitment && places.has(id))
    .map(({ id, commitment }) => ({
      phaseId: id,
      name: nameOf(id),
      crew: board.crews.find((crew) => crew.id === commitment?.crewId)?.name ?? null,
    }));
  return {
    tried,
    lands,
    places,
    ends: shiftsFound(found, board, scale).jobs.filter(({ before, after }) => before !== after),
    broken,
    conflicts: wordsOf(found.conflicts.added, nameOf),
  };
}

/** Promises and due dates are told by themselves; what remains is said, each thing once. */
function wordsOf(conflicts: readonly Conflict[], nameOf: (id: string) => string): string[] {
  return [...new Set(conflicts.flatMap((conflict) => conflictWords(conflict, nameOf) ?? []))];
}
