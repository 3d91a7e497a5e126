import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from '../project-root.js';
import type { MigrationSource } from './apply.js';

/** The migrations and the Prisma schema of this project, or of the folder that MIGRATION_PROJECT names. */
export function projectSource(): MigrationSource {
  const project = process.env['MIGRATION_PROJECT'] ?? projectRoot;
  const schema = join(project, 'prisma', 'schema.prisma');
  return {
    folder: join(project, 'prisma', 'migrations'),
    schema: [['schema.prisma', readFileSync(schema, 'utf8')]],
  };
}
