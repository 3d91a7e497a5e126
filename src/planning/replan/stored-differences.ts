import type { Prisma } from '../../generated/prisma/client.js';
import type { StoredStep } from '../reasons/stored-reason.js';

/** How a plan has a committed phase otherwise than was promised; times are ISO instants, null where it has no place. */
export interface StoredDifference {
  readonly phaseId: string;
  readonly jobId: string;
  readonly startBefore: string;
  readonly startAfter: string | null;
  readonly finishBefore: string;
  readonly finishAfter: string | null;
  readonly crewBeforeId: string | null;
  readonly crewAfterId: string | null;
  readonly reason: StoredStep | null;
}

/** How the last committed finish of a job moves. */
export interface StoredJobFinish {
  readonly jobId: string;
  readonly before: string;
  readonly after: string | null;
}

/** How an improved plan has a phase, about which nothing was promised, otherwise than the plan in force. */
export interface StoredMove extends Omit<StoredDifference, 'startBefore' | 'finishBefore'> {
  readonly startBefore: string | null;
  readonly finishBefore: string | null;
}

/** How an improved plan moves the end of a job against the plan in force. */
export interface StoredJobEnd {
  readonly jobId: string;
  readonly before: string | null;
  readonly after: string | null;
}

/** What a proposal would change. */
export interface StoredDifferences {
  readonly phases: readonly StoredDifference[];
  readonly jobs: readonly StoredJobFinish[];
  /** Of an improved plan only. */
  readonly moves?: readonly StoredMove[];
  /** Of an improved plan only. */
  readonly ends?: readonly StoredJobEnd[];
}

/** The differences of a stored proposal. */
export function readDifferences(stored: Prisma.JsonValue): StoredDifferences {
  return stored as unknown as StoredDifferences;
}
