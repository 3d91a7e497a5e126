import type { Ahead } from '../../../shared/schedule/model.js';
import type { Prisma } from '../../generated/prisma/client.js';

/** One reason as it is kept: instants instead of slots, ids instead of names. What does not apply is left out. */
export interface StoredStep {
  /** Kind of the engine's reason; those of a visit are `visit-phase`, `visit-notice`, `visit-hours`, `visit-booked`, `visit-passed`, `visit-unplanned`. */
  readonly kind: string;
  /** Until when it binds, as an ISO instant. */
  readonly at?: string | null;
  readonly phaseId?: string | null;
  readonly inspectionId?: string;
  readonly clearanceId?: string;
  readonly crewId?: string;
  readonly poolId?: string;
  /** The phase whose finish gives equipment back, when that is not the one it is out with. */
  readonly releasedBy?: string | null;
  /** By which rule the other phase goes first with crew or equipment. */
  readonly ahead?: Ahead;
  readonly link?: { readonly kind: string; readonly lagMinutes: number; readonly lagIn: string };
  readonly weather?: { readonly cause: string; readonly text: string; readonly hour?: string };
  readonly visit?: { readonly from: string; readonly to: string } | null;
  readonly strength?: { readonly now: number | null; readonly needed: number | null };
  /** Cause of a plain earliest start, or the conflict that leaves a phase without a place. */
  readonly code?: string;
}

/** Why a phase sits where it sits: its own reasons, the binding one first, and the phase whose reasons lead on to today. */
export interface StoredReason {
  readonly steps: readonly StoredStep[];
  /** What else binds at the very instant of the first step: it starts earlier only when all of these give way. */
  readonly ties?: readonly StoredStep[];
  readonly next: string | null;
}

/** The reason of a stored row. */
export function readReason(stored: Prisma.JsonValue): StoredReason {
  return stored as unknown as StoredReason;
}
