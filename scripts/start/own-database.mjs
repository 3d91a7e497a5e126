import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { tsImport } from 'tsx/esm/api';
import { root } from '../house/root.mjs';
import { runNode } from '../house/run.mjs';

const unfinished = join(root, '.flagway', 'demo-unfinished');

/** Applies the migrations that a database lacks. */
export const migrate = (url) =>
  runNode(['--import', 'tsx', 'scripts/migrate/cli.ts', 'apply'], {
    env: { DATABASE_URL: url },
    quiet: true,
  });

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
 * The project's own database: running, migrated, with the demo in it.
 *
 * @param {(stop: () => Promise<void>) => void} onceRunning is given the way to stop it as soon as there is something to
 *   stop
 */
export async function ownDatabase(onceRunning) {
  const { projectDatabase } = await tsImport('../postgres/project-database.ts', import.meta.url);
  const database = await projectDatabase(root);
  onceRunning(() => database.stop());
  if (existsSync(unfinished)) await database.empty();
  await migrate(database.url);
  if (existsSync(unfinished) || (await database.isEmpty('Company'))) await loadDemo(database.url);
  return database;
}
