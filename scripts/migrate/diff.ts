import { applyMigrations, type MigrationSource } from './apply.js';
import { engineAdapter } from './adapter.js';
import { loadEngine } from './engine.js';

/** What the engine prints instead of an empty script. */
const EMPTY = '-- This is an empty migration.';

/**
 * The SQL that leads from the migrations to the Prisma schema; empty when they agree.
 *
 * @param scratchUrl an empty database, which is migrated and compared; throw it away afterwards.
 */
export async function differenceToSchema(scratchUrl: string, source: MigrationSource): Promise<string> {
  await applyMigrations(scratchUrl, source);
  const files = source.schema.map(([path, content]) => ({ path, content }));
  const engine = await loadEngine(source.schema, engineAdapter(scratchUrl));
  const result = await engine.diff({
    from: { tag: 'schemaDatasource', files, configDir: '' },
    to: { tag: 'schemaDatamodel', files },
    script: true,
    exitCode: true,
    filters: { externalTables: [], externalEnums: [] },
  });
  const sql = (result.stdout ?? '').trim();
  return sql === EMPTY ? '' : sql;
}
