import { createPostgresBackend, PostgresConnection, withBackend } from 'bullmq';
import type { QueueBackend } from './queue-backend.js';
import type { QueueEntry } from './queue-entry.js';

const { Queue, Worker } = withBackend(createPostgresBackend);

/** The queue in a schema of its own inside the service's PostgreSQL: the default, which needs no further server. */
export function postgresBackend(url: string, prefix: string): QueueBackend {
  const connection = { connectionString: url, schema: queueSchema(prefix), max: 4 };
  return {
    name: 'postgresql',
    prepare: async () => {
      const setup = new PostgresConnection({ ...connection, migrate: true });
      try {
        await setup.waitUntilReady();
      } finally {
        await setup.close();
      }
    },
    producer: (lane) => new Queue<QueueEntry>(lane, { connection }),
    consumer: (lane, handle, options) => new Worker<QueueEntry>(lane, handle, { ...options, connection }),
    close: () => Promise.resolve(),
  };
}

/** Name of the schema that belongs to a prefix. */
export function queueSchema(prefix: string): string {
  return `queue_${prefix.replaceAll('-', '_')}`;
}
