import { withMigrationLock } from './advisory-lock.js';
import { engineAdapter } from './adapter.js';
import { loadEngine, type SchemaFiles } from './engine.js';
import { forgetFailedTries, pendingMigrations } from './history.js';
import { migrationList, readMigrations } from './migration-list.js';

/** Where the migrations lie and what they must amount to. */
export interface MigrationSource {
  readonly folder: string;
  readonly schema: SchemaFiles;
}

/** Says which migration failed and what the database said. */
function failure(error: unknown, fault: unknown): Error {
  const told = error instanceof Error ? error.message : String(error);
  const name = /migration_name="([^"]+)"/.exec(told)?.[1];
  const said = fault instanceof Error ? fault.message : told;
  return new Error(
    `The migration ${name ?? ''} failed and was undone: ${said}. Mend its script and try again.`,
    {
      cause: error,
    },
  );
}

/**
 * Brings a database up to date. Two callers at once take turns; each migration is applied whole or not at all.
 *
 * @returns the names of the migrations applied now.
 * @throws Error when a script fails, or when the database's history does not fit the project's.
 */
export function applyMigrations(url: string, source: MigrationSource): Promise<readonly string[]> {
  return withMigrationLock(url, async (client) => {
    const migrations = readMigrations(source.folder);
    await forgetFailedTries(client);
    const pending = await pendingMigrations(client, migrations);
    if (pending.length === 0) return [];
    const adapter = engineAdapter(url);
    const engine = await loadEngine(source.schema, adapter);
    try {
      await engine.applyMigrations({
        migrationsList: migrationList(source.folder, migrations),
        filters: { externalTables: [], externalEnums: [] },
      });
    } catch (error) {
      await forgetFailedTries(client);
      throw failure(error, adapter.lastFault());
    }
    const left = await pendingMigrations(client, migrations);
    if (left.length > 0) throw new Error(`Not applied: ${left.map(({ name }) => name).join(', ')}.`);
    return pending.map(({ name }) => name);
  });
}
