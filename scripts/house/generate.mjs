import { existsSync } from 'node:fs';
import { runNode } from './run.mjs';
import { upToDate } from './up-to-date.mjs';

/** Generates the database client from prisma/schema.prisma. */
export function generate(say) {
  return upToDate(
    {
      name: 'client',
      from: ['prisma/schema.prisma', 'package-lock.json'],
      to: 'src/generated/prisma/client.ts',
    },
    async () => {
      say('Generating the database client ...');
      await runNode(['node_modules/prisma/build/index.js', 'generate', '--schema', 'prisma/schema.prisma'], {
        quiet: true,
        env: {
          // Generating needs no engine; naming any program keeps the tool from downloading one.
          PRISMA_SCHEMA_ENGINE_BINARY: existsSync('/bin/true') ? '/bin/true' : process.execPath,
          PRISMA_HIDE_UPDATE_MESSAGE: '1',
          CHECKPOINT_DISABLE: '1',
        },
      });
    },
  );
}
