import pg from 'pg';

/** Any fixed number, used for nothing else in a database of this service. */
const MIGRATION_LOCK = 44_800_101;

/** Does the work while holding the database's migration lock, so that two starters never migrate at once. */
export async function withMigrationLock<T>(url: string, work: (client: pg.Client) => Promise<T>): Promise<T> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    await client.query('select pg_advisory_lock($1)', [MIGRATION_LOCK]);
    return await work(client);
  } finally {
    await client.end();
  }
}
