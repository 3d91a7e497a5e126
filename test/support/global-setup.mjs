import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import pg from 'pg';
import { tsImport } from 'tsx/esm/api';

/*
 * Starts one PostgreSQL for the tiers that need it, thrown away afterwards, with a migrated template database from
 * which every suite copies its own. With TEST_POSTGRES_URL set (an address without database name, as a superuser) that
 * server is used instead and left running.
 */

/** Name of the migrated database that `freshDatabase` copies. */
const TEMPLATE = 'flagway_template';

const root = fileURLToPath(new URL('../..', import.meta.url));

export default async function globalSetup() {
  if (process.env.TEST_POSTGRES_URL) return;
  const { throwawayPostgres } = await tsImport('../../scripts/postgres/throwaway.ts', import.meta.url);
  const server = await throwawayPostgres();
  globalThis.flagwayPostgres = server;
  const admin = new pg.Client({ connectionString: `${server.url}/postgres` });
  await admin.connect();
  await admin.query(`create database ${TEMPLATE}`);
  await admin.end();
  // In a process of its own, as always: the schema engine keeps a timer running.
  await promisify(execFile)(process.execPath, ['--import', 'tsx', 'scripts/migrate/cli.ts', 'apply'], {
    cwd: root,
    env: { ...process.env, DATABASE_URL: `${server.url}/${TEMPLATE}` },
  });
  process.env.TEST_POSTGRES_URL = server.url;
}
