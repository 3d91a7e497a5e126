import { randomUUID } from 'node:crypto';
import pg from 'pg';
import { loadDemo } from '../../../prisma/demo/demo.js';
import { setLogLevel } from '../../../src/platform/log.js';
import type { FreshDatabase } from '../../support/fresh-database.js';

/** The moment up to which the demo is worked: a Wednesday at ten in the morning, in the cold. */
export const PRESENT = '2031-01-15T15:00:00Z';

const MIGRATED = 'flagway_template';
const LOADED = 'flagway_demo';

/** A copy of the demo for one suite. The demo itself is worked once for all suites, which takes a while. */
export async function demoDatabase(): Promise<FreshDatabase> {
  if (!(await exists(LOADED))) await load();
  const name = `demo_${randomUUID().replaceAll('-', '')}`;
  await admin(`create database ${name} template ${LOADED}`);
  return { url: addressOf(name), drop: async () => void (await admin(`drop database ${name} with (force)`)) };
}

/** Works the demo in a database that only gets its name when it is whole. */
async function load(): Promise<void> {
  const unfinished = `unfinished_${randomUUID().replaceAll('-', '')}`;
  await admin(`create database ${unfinished} template ${MIGRATED}`);
  const before = { ...process.env };
  process.env['DATABASE_URL'] = addressOf(unfinished);
  setLogLevel('error');
  try {
    await loadDemo(new Date(PRESENT), () => undefined);
  } finally {
    for (const name of Object.keys(process.env))
      if (!(name in before)) Reflect.deleteProperty(process.env, name);
    Object.assign(process.env, before);
  }
  await admin(`alter database ${unfinished} rename to ${LOADED}`);
}

const addressOf = (name: string): string => `${process.env['TEST_POSTGRES_URL']}/${name}`;

async function exists(name: string): Promise<boolean> {
  const rows = await admin('select 1 from pg_database where datname = $1', [name]);
  return rows.length > 0;
}

async function admin(sql: string, values: string[] = []): Promise<unknown[]> {
  const client = new pg.Client({ connectionString: addressOf('postgres') });
  await client.connect();
  try {
    return (await client.query(sql, values)).rows;
  } finally {
    await client.end();
  }
}
