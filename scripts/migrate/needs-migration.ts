import pg from 'pg';
import { pendingMigrations } from './history.js';
import { readMigrations } from './migration-list.js';

/**
 * Whether a database lacks any migration, asked without the schema engine.
 *
 * @throws Error as applying would, when the database's history does not fit the folder's
 */
export async function needsMigration(url: string, folder: string): Promise<boolean> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await pendingMigrations(client, readMigrations(folder))).length > 0;
  } finally {
    await client.end();
  }
}
