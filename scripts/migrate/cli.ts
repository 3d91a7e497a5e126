import { projectDatabase } from '../postgres/project-database.js';
import { projectRoot } from '../project-root.js';
import { applyMigrations } from './apply.js';
import { differenceToSchema } from './diff.js';
import { writeNewMigration } from './new-migration.js';
import { projectSource } from './project-source.js';
import { withScratchDatabase } from './scratch.js';

/*
 * npm run migrate                  apply what is missing to DATABASE_URL, or to the project's own database
 * npm run migrate:check            fail when the migrations do not amount to prisma/schema.prisma
 * npm run migrate:new -- <name>    write the migration that leads from the migrations to prisma/schema.prisma
 */

const say = (text: string): boolean => process.stdout.write(`${text}\n`);

async function apply(): Promise<void> {
  const given = process.env['DATABASE_URL'];
  const own = given ? undefined : await projectDatabase(projectRoot);
  try {
    const names = await applyMigrations(given ?? own?.url ?? '', projectSource());
    say(
      names.length === 0 ? 'The database is up to date.' : names.map((name) => `Applied ${name}.`).join('\n'),
    );
  } finally {
    if (own && !own.adopted) await own.stop();
  }
}

async function check(): Promise<void> {
  const sql = await withScratchDatabase((url) => differenceToSchema(url, projectSource()));
  if (sql !== '') {
    throw new Error(
      `The migrations do not amount to prisma/schema.prisma. Missing:\n\n${sql}\n\n` +
        'Write it with "npm run migrate:new -- <name>".',
    );
  }
  say('The migrations amount to the schema.');
}

async function fresh(name: string | undefined): Promise<void> {
  if (!name) throw new Error('Name the migration: npm run migrate:new -- <name>');
  const file = await withScratchDatabase((url) =>
    writeNewMigration(url, projectSource(), { now: new Date(), name }),
  );
  say(
    file
      ? `Wrote ${file}. Read it, add what the schema cannot say, then npm run migrate.`
      : 'Nothing to migrate.',
  );
}

const commands: Record<string, () => Promise<void>> = { apply, check, new: () => fresh(process.argv[3]) };

try {
  const command = commands[process.argv[2] ?? ''];
  if (!command) throw new Error(`Say which: ${Object.keys(commands).join(', ')}.`);
  await command();
  // The schema engine leaves a timer behind.
  process.exit(0);
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exit(1);
}
