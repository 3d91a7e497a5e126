import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { MigrationList } from '@prisma/schema-engine-wasm';

/** A migration as it lies in its folder. */
export interface Migration {
  /** Folder name, `<timestamp>_<name>`; the order of the names is the order of application. */
  readonly name: string;
  readonly sql: string;
  /** SHA-256 of the script, hexadecimal, as Prisma's own table keeps it. */
  readonly checksum: string;
}

/** Reads the migrations of a folder in their order. @throws Error naming a folder without its script. */
export function readMigrations(folder: string): readonly Migration[] {
  if (!existsSync(folder)) return [];
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort()
    .map((name) => {
      const file = join(folder, name, 'migration.sql');
      if (!existsSync(file)) throw new Error(`${file} is missing: write it or remove its folder.`);
      const sql = readFileSync(file, 'utf8');
      return { name, sql, checksum: createHash('sha256').update(sql).digest('hex') };
    });
}

/** The same in the shape that the schema engine reads. */
export function migrationList(folder: string, migrations: readonly Migration[]): MigrationList {
  const lock = join(folder, 'migration_lock.toml');
  return {
    baseDir: folder,
    lockfile: {
      path: 'migration_lock.toml',
      content: existsSync(lock) ? readFileSync(lock, 'utf8') : null,
    },
    shadowDbInitScript: '',
    migrationDirectories: migrations.map(({ name, sql }) => ({
      path: name,
      migrationFile: { path: 'migration.sql', content: { tag: 'ok', value: sql } },
    })),
  };
}
