import { bestPlace } from './best-place.js';
import type { Bound } from './lower-bounds.js';
import type { Reason } from './model.js';
import type { Placement } from './outcome.js';
import type { FixedPlace } from './pinned.js';
import type { Node } from './problem.js';
import type { Reads } from './reads.js';
import type { NotFound } from './search.js';
import type { State } from './state.js';

/**
 * Keeps a commitment inside the freeze window in place, with its crew, even where the phase could go earlier. A hard constraint moves it
 * to the first place after, on any crew, and the conflict names the constraint.
 */
export function placeFrozen(state: State, node: Node, floors: readonly Bound[], reads: Reads): FixedPlace {
  const { start: committed, crewId } = node.phase.commitment!;
  const all = node.choices;
  const own = all.filter(({ crew }) => crew?.id === crewId);
  const floor: Bound = { at: committed, reason: { kind: 'commitment', at: committed } };
  const kept = bestPlace(state, node, own.length > 0 ? own : all, [...floors, floor], reads);
  if (kept.placed && kept.start === committed) return { place: kept, conflicts: [] };
  const moved = own.length > 0 ? bestPlace(state, node, all, [...floors, floor], reads) : kept;
  if (!moved.placed) return { place: moved, conflicts: [] };
  const { start } = moved;
  const conflict = {
    code: 'commitmentBroken',
    phaseId: node.id,
    committed,
    start,
    cause: causeOf(kept),
  } as const;
  return { place: moved, conflicts: [conflict] };
}

/** What kept it from its slot: not the commitment itself, which only held it there. */
function causeOf(place: Placement | NotFound): Reason {
  if (place.reason.kind !== 'commitment' || !place.placed) return place.reason;
  return place.trail[place.trail.length - 1]!.reason;
}
