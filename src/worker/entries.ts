import type { QueueEntry } from '../platform/queue/queue-entry.js';

/** The entry of an outbox row. */
export const outboxEntry = ({ id }: { id: bigint }): QueueEntry => ({
  kind: 'outbox',
  id: id.toString(),
  generation: 1,
});

/** The entry of a reminder as it is due now. */
export const reminderEntry = ({ id, generation }: { id: string; generation: number }): QueueEntry => ({
  kind: 'reminder',
  id,
  generation,
});

/** The entry of a search for a better plan. */
export const improvementEntry = ({ id }: { id: string }): QueueEntry => ({
  kind: 'improvement',
  id,
  generation: 1,
});

/** The entry of a forecast that is to be fetched now. */
export const forecastEntry = ({
  siteId,
  generation,
}: {
  siteId: string;
  generation: number;
}): QueueEntry => ({
  kind: 'forecast',
  id: siteId,
  generation,
});

/** The entry of a claimed delivery. */
export const deliveryEntry = (id: string): QueueEntry => ({ kind: 'delivery', id, generation: 1 });
