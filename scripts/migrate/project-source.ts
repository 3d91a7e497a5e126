import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from '../project-root.js';
import type { MigrationSource } from './apply.js';

/** The migrations and the Prisma schema of this project. */
export function projectSource(): MigrationSource {
  const schema = join(projectRoot, 'prisma', 'schema.prisma');
  return {
    folder: join(projectRoot, 'prisma', 'migrations'),
    schema: [['schema.prisma', readFileSync(schema, 'utf8')]],
  };
}
