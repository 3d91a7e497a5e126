import type pg from 'pg';
import type { Migration } from './migration-list.js';

interface AppliedRow {
  migration_name: string;
  checksum: string;
}

/** Whether the database has had any migration at all. */
async function hasHistory(client: pg.Client): Promise<boolean> {
  const { rows } = await client.query<{ name: string | null }>(
    `select to_regclass('_prisma_migrations') as name`,
  );
  return rows[0]?.name != null;
}

/** The migrations a database says it has had, oldest first; none for a new database. */
async function appliedRows(client: pg.Client): Promise<readonly AppliedRow[]> {
  if (!(await hasHistory(client))) return [];
  const { rows } = await client.query<AppliedRow>(
    `select migration_name, checksum from _prisma_migrations
     where finished_at is not null and rolled_back_at is null order by started_at`,
  );
  return rows;
}

/**
 * Forgets tries that failed. A migration is one transaction here, so a failed one has left nothing behind and may be
 * tried again once its script is right.
 */
export async function forgetFailedTries(client: pg.Client): Promise<void> {
  if (!(await hasHistory(client))) return;
  await client.query(`delete from _prisma_migrations where finished_at is null and rolled_back_at is null`);
}

/**
 * Compares what a database has had with what the project has.
 *
 * @returns the migrations still to apply.
 * @throws Error when an applied migration was edited, is missing, or when one would come before an applied one.
 */
export async function pendingMigrations(
  client: pg.Client,
  migrations: readonly Migration[],
): Promise<readonly Migration[]> {
  const applied = await appliedRows(client);
  const byName = new Map(migrations.map((migration) => [migration.name, migration]));
  for (const row of applied) {
    const own = byName.get(row.migration_name);
    if (!own) {
      throw new Error(
        `The database has had the migration ${row.migration_name}, which this version does not know. ` +
          'Start the newer version, or point DATABASE_URL at another database.',
      );
    }
    if (own.checksum !== row.checksum) {
      throw new Error(
        `The migration ${own.name} was edited after it was applied. Restore its script and put the change into a ` +
          'new migration (npm run migrate:new -- <name>).',
      );
    }
  }
  const had = new Set(applied.map((row) => row.migration_name));
  const last =
    applied
      .map((row) => row.migration_name)
      .sort()
      .at(-1) ?? '';
  const pending = migrations.filter((migration) => !had.has(migration.name));
  const early = pending.find((migration) => migration.name < last);
  if (early) {
    throw new Error(
      `The migration ${early.name} would come before ${last}, which is applied. Give it a later name.`,
    );
  }
  return pending;
}
