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

async function connect(url: string, onFault: (fault: unknown) => void): Promise<SqlDriverAdapter> {
  const pool = new pg.Pool({ connectionString: url, max: 4 });
  const adapter = await new PrismaPg(pool, { disposeExternalPool: true }).connect();
  readCharColumns(adapter);
  // The adapter's own way splits a script at every semicolon, also inside a function body.
  adapter.executeScript = (script) =>
    runWhole(pool, script).catch((fault: unknown) => {
      onFault(fault);
      throw fault;
    });
  return adapter;
}

/** Connects the schema engine to a database. */
export interface EngineAdapter extends SqlMigrationAwareDriverAdapterFactory {
  /** What the database said to the last script that failed; the engine does not pass it on. */
  lastFault(): unknown;
}

/**
 * Makes the connection. The engine gets no shadow database: it would take the main one for it.
 *
 * @param url the database it works on
 */
export function engineAdapter(url: string): EngineAdapter {
  let last: unknown;
  return {
    provider: 'postgres',
    adapterName: '@prisma/adapter-pg',
    connect: () => connect(url, (fault) => (last = fault)),
    connectToShadowDb: () =>
      Promise.reject(new Error('The schema engine asked for a shadow database, and none is given.')),
    lastFault: () => last,
  };
}
