import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { MigrationSource } from './apply.js';
import { differenceToSchema } from './diff.js';

/** `20260131120000_add-crews` for the time and a name. */
export function migrationName(now: Date, name: string): string {
  if (!/^[a-z0-9][a-z0-9_-]*$/.test(name)) {
    throw new Error(`"${name}" is no name for a migration: use lower-case letters, digits, - and _.`);
  }
  return `${now.toISOString().replace(/\D/g, '').slice(0, 14)}_${name}`;
}

/**
 * Writes the migration that leads from those of the folder to the schema. What the schema language cannot say
 * (exclusions, checks, triggers) is added to the script by hand before it is committed.
 *
 * @returns the file written, or undefined when the schema already agrees.
 */
export async function writeNewMigration(
  scratchUrl: string,
  source: MigrationSource,
  { now, name }: { now: Date; name: string },
): Promise<string | undefined> {
  const folder = join(source.folder, migrationName(now, name));
  const sql = await differenceToSchema(scratchUrl, source);
  if (sql === '') return undefined;
  mkdirSync(folder, { recursive: true });
  const file = join(folder, 'migration.sql');
  writeFileSync(file, `${sql}\n`, { flag: 'wx' });
  return file;
}
