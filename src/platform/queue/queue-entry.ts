/**
 * What an entry asks for: an outbox row, a reminder, a delivery or a search for a better plan to be looked at, or the
 * forecast of a site to be fetched.
 */
export type WorkKind = 'outbox' | 'reminder' | 'delivery' | 'improvement' | 'forecast';

/** Queues that are worked off side by side: what waits for other servers must not keep the rest waiting. */
export const LANES = ['work', 'fetch'] as const;
export type Lane = (typeof LANES)[number];

/** The queue that an entry belongs to. */
export const laneOf = ({ kind }: QueueEntry): Lane => (kind === 'forecast' ? 'fetch' : 'work');

/** One piece of work in the queue: ids only. The row it names says whether anything is still to be done. */
export interface QueueEntry {
  readonly kind: WorkKind;
  /** Id of the row. */
  readonly id: string;
  /** Raised when the row was moved after it had been queued, so an older entry finds itself outdated. */
  readonly generation: number;
}

/**
 * Name of an entry inside the queue, which ignores an entry whose name it still holds. It has no colon and is no bare
 * number: the queue refuses both.
 */
export function entryName({ kind, id, generation }: QueueEntry): string {
  return `${kind}-${id}-${generation}`;
}
