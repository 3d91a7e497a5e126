import { randomUUID } from 'node:crypto';
import pg from 'pg';

/** Template database that the global setup has migrated. */
const TEMPLATE = 'flagway_template';

/** A database of one suite's own. */
export interface FreshDatabase {
  readonly url: string;
  drop(): Promise<void>;
}

async function admin(sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: `${process.env['TEST_POSTGRES_URL']}/postgres` });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}

/** Copies the migrated template; takes some tens of milliseconds. */
export async function freshDatabase(): Promise<FreshDatabase> {
  const name = `t_${randomUUID().replaceAll('-', '')}`;
  await admin(`create database ${name} template ${TEMPLATE}`);
  return {
    url: `${process.env['TEST_POSTGRES_URL']}/${name}`,
    drop: () => admin(`drop database if exists ${name} with (force)`),
  };
}
