import type { Conflict, Crew, Reason, TrailStep } from './model.js';
import type { Hours } from './problem.js';
import type { Slot } from './slot.js';

/** A phase with its place. */
export interface Placement {
  readonly placed: true;
  readonly state: 'done' | 'started' | 'planned';
  readonly start: Slot;
  readonly finish: Slot;
  readonly crew: Crew | null;
  /** Place of the crew in id order; -1 for none. */
  readonly crewIndex: number;
  readonly hours: Hours;
  readonly ready: Slot;
  readonly readyReason: Reason;
  readonly trail: readonly TrailStep[];
  readonly reason: Reason;
  readonly conflicts: readonly Conflict[];
}

/** A phase that could not be placed. */
export interface Unplaced {
  readonly placed: false;
  readonly reason: Reason;
  readonly conflicts: readonly Conflict[];
}

export type Outcome = Placement | Unplaced;

/** The one constraint that binds: the last wait that is more than closed hours, else what made the phase ready. */
export function bindingReason(ready: Reason, trail: readonly TrailStep[]): Reason {
  for (let i = trail.length - 1; i >= 0; i--)
    if (trail[i]!.reason.kind !== 'calendar') return trail[i]!.reason;
  return ready.kind === 'now' && trail.length > 0 ? trail[trail.length - 1]!.reason : ready;
}
