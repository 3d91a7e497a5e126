import { PrismaPg } from '@prisma/adapter-pg';
import type { SqlDriverAdapter, SqlMigrationAwareDriverAdapterFactory } from '@prisma/driver-adapter-utils';
import pg from 'pg';
import { readCharColumns } from './char-columns.js';

/** Runs a script as one text in one transaction: all of it happens or none of it does. */
async function runWhole(pool: pg.Pool, script: string): Promise<void> {
  const client = await pool.connect();
  try {
    await client.query('begin');
    await client.query(script);
    await client.query('commit');
  } catch (error) {
    await client.query('rollback').catch(() => undefined);
    throw error;
  } finally {
    client.release();
  }
}

async function connect(url: string): Promise<SqlDriverAdapter> {
  const pool = new pg.Pool({ connectionString: url, max: 4 });
  const adapter = await new PrismaPg(pool, { disposeExternalPool: true }).connect();
  readCharColumns(adapter);
  // The adapter's own way splits a script at every semicolon, also inside a function body.
  adapter.executeScript = (script) => runWhole(pool, script);
  return adapter;
}

/**
 * Connects the schema engine to a database.
 *
 * @param shadowUrl an empty database that the engine may fill and that is thrown away afterwards; without it any
 *   request for one is refused, since the engine would otherwise take the main database for it.
 */
export function engineAdapter(url: string, shadowUrl?: string): SqlMigrationAwareDriverAdapterFactory {
  return {
    provider: 'postgres',
    adapterName: '@prisma/adapter-pg',
    connect: () => connect(url),
    connectToShadowDb: () => {
      if (shadowUrl === undefined || shadowUrl === url) {
        return Promise.reject(
          new Error('The schema engine asked for a shadow database where none is given.'),
        );
      }
      return connect(shadowUrl);
    },
  };
}
