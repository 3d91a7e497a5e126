import type { Gate, Role } from '../../generated/prisma/client.js';
import type { Refusal } from '../../platform/outcomes/refusal.js';
import type { PhaseFacts } from '../facts/phase-facts.js';

/** Which gate of a phase is asked about, and for when. */
export interface Moment {
  readonly gate: Gate;
  readonly at: Date;
}

/** One thing that stands in the way, with the row it is about. */
export interface FoundObstacle {
  readonly code: string;
  /** What is missing and what to do. */
  readonly message: string;
  /** Who can lift it; null when only time can. */
  readonly liftedBy: Role | null;
  readonly holdPointId?: string;
  readonly phaseId?: string;
  readonly inspectionId?: string;
  readonly clearanceId?: string;
  readonly weatherHoldId?: string;
  readonly poolId?: string;
}

/** One kind of obstacle: finds all of its kind, and makes the refusal that a start or finish gets for them. */
export interface ObstacleCheck {
  readonly find: (facts: PhaseFacts, moment: Moment) => FoundObstacle[];
  readonly refuse: (found: readonly FoundObstacle[], facts: PhaseFacts) => Refusal;
}

/** The messages of obstacles as one text. */
export function messagesOf(found: readonly FoundObstacle[]): string {
  return found.map(({ message }) => message).join(' ');
}

/** The ids that obstacles name, each once. */
export function idsOf(
  found: readonly FoundObstacle[],
  key: 'holdPointId' | 'phaseId' | 'inspectionId' | 'clearanceId' | 'weatherHoldId',
): string[] {
  return [...new Set(found.flatMap((obstacle) => obstacle[key] ?? []))];
}
