import {
  DEFAULT_WEIGHTS,
  type Objective,
  type ObjectiveWeights,
} from '../../../shared/schedule/improve/objective.js';
import type { Prisma } from '../../generated/prisma/client.js';

/** What a search says of itself when it ends; it holds for the input it searched on. */
export interface StoredOutcome {
  readonly before: Objective | null;
  readonly after: Objective | null;
  /** Of the search, on its own input. */
  readonly withinPercent: number | null;
  readonly proved: boolean;
  readonly factsMoved: boolean;
}

/** The outcome of a stored search; null before it has ended. */
export const readOutcome = (stored: Prisma.JsonValue): StoredOutcome | null =>
  stored as unknown as StoredOutcome | null;

/** How far a search is. */
export interface StoredProgress {
  readonly total: number;
  readonly withinPercent: number | null;
  readonly seconds: number;
}

/** The progress of a stored search; null before it said any. */
export const readProgress = (stored: Prisma.JsonValue): StoredProgress | null =>
  stored as unknown as StoredProgress | null;

/** The order that a stored search found; null when it has none. */
export const readOrder = (stored: Prisma.JsonValue): readonly string[] | null =>
  stored as unknown as readonly string[] | null;

/** What counts how much for a search: as asked for, and as usual for what was left out. */
export const readWeights = (stored: Prisma.JsonValue): ObjectiveWeights => ({
  ...DEFAULT_WEIGHTS,
  ...(stored as Partial<ObjectiveWeights> | null),
});
