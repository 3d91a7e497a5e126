import type { Prisma } from '../../generated/prisma/client.js';
import type { StoredReason, StoredStep } from '../reasons/stored-reason.js';

/** A conflict as it is kept: instants instead of slots, ids instead of names. What does not apply is left out. */
export interface StoredConflict {
  readonly code: string;
  readonly phaseId?: string | null;
  readonly jobId?: string | null;
  readonly phaseIds?: readonly string[];
  readonly clearanceId?: string;
  readonly inspectionId?: string;
  readonly crewId?: string;
  readonly poolId?: string;
  readonly trade?: string;
  /** What was asked for: a pin, a promise, a due date, a booking, a lapse. */
  readonly asked?: string | null;
  /** What the plan gives instead. */
  readonly given?: string | null;
  readonly needed?: number;
  readonly available?: number;
  readonly cause?: StoredStep;
}

/** What the row of a plan keeps beside its hashes. */
export interface StoredConflicts {
  readonly conflicts: readonly StoredConflict[];
  /** Why the phases without a place have none, by phase id. */
  readonly unplanned: Readonly<Record<string, StoredReason>>;
}

/** The conflicts of a stored plan; none for a company that has no plan yet. */
export function readConflicts(stored: Prisma.JsonValue | undefined): StoredConflicts {
  return (stored as unknown as StoredConflicts | undefined) ?? { conflicts: [], unplanned: {} };
}
