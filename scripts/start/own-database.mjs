import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { tsImport } from 'tsx/esm/api';
import { say } from '../house/prepare.mjs';
import { root } from '../house/root.mjs';
import { runNode } from '../house/run.mjs';

const unfinished = join(root, '.flagway', 'demo-unfinished');

/** Applies the migrations that a database lacks. */
export async function migrate(url) {
  const { needsMigration } = await tsImport('../migrate/needs-migration.ts', import.meta.url);
  if (!(await needsMigration(url, join(root, 'prisma', 'migrations')))) return;
  await runNode(['--import', 'tsx', 'scripts/migrate/cli.ts', 'apply'], {
    env: { DATABASE_URL: url },
    quiet: true,
  });
}

/**
 * Loads the demo into a database without companies. A load that was killed on the way is thrown away with its database
 * and begun again: nobody can have worked in it yet.
 */
async function loadDemo(url) {
  mkdirSync(join(root, '.flagway'), { recursive: true });
  writeFileSync(unfinished, 'The demo is being loaded.\n');
  await runNode(['--enable-source-maps', 'dist/prisma/seed.js'], {
    env: { DATABASE_URL: url, FLAGWAY_LOG: 'warn' },
  });
  rmSync(unfinished, { force: true });
}

/**
 * The project's own database: running, migrated, with the demo in it. Should the server be killed while it is used, it
 * is started again in the same place; those who use it connect anew.
 *
 * @param {(stop: () => Promise<void>) => void} onceRunning is given the way to stop it as soon as there is something to
 *   stop
 * @param {(why: string) => void} onLost is told when it cannot be started again
 */
export async function ownDatabase(onceRunning, onLost) {
  const { projectDatabase } = await tsImport('../postgres/project-database.ts', import.meta.url);
  const first = await projectDatabase(root);
  let database = first;
  let stopped = false;
  onceRunning(async () => {
    stopped = true;
    await database.stop();
  });
  if (existsSync(unfinished)) await database.empty();
  await migrate(database.url);
  if (existsSync(unfinished) || (await database.isEmpty('Company'))) await loadDemo(database.url);

  const startAgain = async () => {
    if (stopped) return;
    try {
      database = await projectDatabase(root);
      if (database.url !== first.url) throw new Error('its port has been taken by another program');
      say('The database had been killed and was started again.');
      database.whenGone(() => void startAgain());
    } catch (error) {
      onLost(`the database was killed and could not be started again: ${error.message}`);
    }
  };
  database.whenGone(() => void startAgain());
  return database;
}
