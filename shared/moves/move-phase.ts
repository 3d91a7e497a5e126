import type { Change } from '../schedule/change.js';
import type { Gate, Phase, PlanInput } from '../schedule/model.js';
import type { Slot } from '../schedule/slot.js';

/** Another start for a phase: the first place from a slot on, or that very slot. */
export interface PhaseMove {
  readonly phaseId: string;
  readonly way: 'notBefore' | 'fixed';
  readonly at: Slot;
  /** The crew that is to do it; the one it has, or the plan's choice, when left out. */
  readonly crewId?: string | undefined;
}

/** Cause of the gate that keeps a phase from starting before the office lets it. */
export const OFFICE_CAUSE = 'office';

/**
 * A move as changes of what is planned. The phase is ranked by where it is to go, and its own promise gives way.
 *
 * @throws RangeError when the phase is not in the input, or has begun
 */
export function moveChanges(input: PlanInput, move: PhaseMove): Change[] {
  const phase = input.phases.find(({ id }) => id === move.phaseId);
  if (!phase) throw new RangeError(`There is no phase "${move.phaseId}" to move: name one of the input.`);
  if (phase.facts?.actualStart !== undefined)
    throw new RangeError(`Phase "${move.phaseId}" has begun: move one that has not.`);
  return [{ kind: 'phase', phase: moved(phase, move) }];
}

function moved(phase: Phase, { way, at, crewId = phase.crewId }: PhaseMove): Phase {
  const gates = (phase.gates ?? []).filter((gate) => !isFloor(gate));
  const common = { ...phase, crewId, commitment: undefined };
  if (way === 'fixed') return { ...common, gates, facts: { ...phase.facts, pinnedStart: at } };
  const floor: Gate = { kind: 'notBefore', id: phase.id, at, cause: OFFICE_CAUSE };
  return {
    ...common,
    gates: [...gates, floor],
    facts: phase.facts && { ...phase.facts, pinnedStart: undefined },
    previous: { start: at, crewId: crewId ?? phase.previous?.crewId },
  };
}

/** What only people have set, by a promise or by a move before: it gives way to what they set now. */
const isFloor = (gate: Gate): boolean =>
  gate.kind === 'notBefore' && (gate.cause === 'commitment' || gate.cause === OFFICE_CAUSE);
