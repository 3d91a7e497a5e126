import { execFile } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/*
 * A project of a suite's own with a small schema and migrations, on which the real commands are tried.
 *
 *   const project = migrationProject();
 *   project.schema('model Job { id Int @id }');
 *   project.migration('1_jobs', 'create table ...');
 *   await project.run('apply', url);      // {code, output}
 */

const cli = fileURLToPath(new URL('../../scripts/migrate/cli.ts', import.meta.url));
const root = fileURLToPath(new URL('../..', import.meta.url));

const HEAD = `datasource db {
  provider = "postgresql"
}
`;

/** How a command ended and everything it said. */
export interface CommandEnd {
  readonly code: number;
  readonly output: string;
}

/** A folder with a schema and migrations. */
export interface MigrationProject {
  readonly folder: string;
  schema(models: string): void;
  migration(name: string, sql: string): void;
  run(command: 'apply' | 'check', url?: string): Promise<CommandEnd>;
  run(command: 'new', name: string): Promise<CommandEnd>;
  remove(): void;
}

/** Makes the folder. */
export function migrationProject(): MigrationProject {
  const folder = mkdtempSync(join(tmpdir(), 'flagway-migrations-'));
  return {
    folder,
    schema: (models) => {
      mkdirSync(join(folder, 'prisma', 'migrations'), { recursive: true });
      writeFileSync(join(folder, 'prisma', 'schema.prisma'), HEAD + models);
    },
    migration: (name, sql) => {
      const own = join(folder, 'prisma', 'migrations', name);
      mkdirSync(own, { recursive: true });
      writeFileSync(join(own, 'migration.sql'), sql);
    },
    run: (command, argument) =>
      new Promise((resolve) => {
        execFile(
          process.execPath,
          ['--import', 'tsx', cli, command, ...(command === 'new' && argument ? [argument] : [])],
          {
            cwd: root,
            env: {
              ...process.env,
              MIGRATION_PROJECT: folder,
              ...(command === 'apply' && argument ? { DATABASE_URL: argument } : {}),
            },
          },
          (error, out, err) => resolve({ code: error ? Number(error.code ?? 1) : 0, output: out + err }),
        );
      }),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
