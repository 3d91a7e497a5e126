import { spawn } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { projectRoot } from '../../scripts/project-root.js';
import { findPostmaster, stopPostmaster, until } from '../../scripts/postgres/postmaster.js';

/*
 * A copy of the project in a temporary folder, where `npm start` can be tried and killed without touching the project's
 * own data. Packages and what is built are the project's; the demo is replaced by one company, since loading it takes
 * long and is tried elsewhere.
 *
 *   const copy = projectCopy();
 *   const start = copy.start();
 *   const address = await start.address();
 *   start.kill('SIGKILL');
 *   await copy.remove();
 */

const LEFT_OUT = new Set(['node_modules', '.git', '.flagway', 'coverage', 'test', 'docs']);

const SEED = `import { writeFileSync } from 'node:fs';
import pg from 'pg';
writeFileSync('seed.pid', String(process.pid));
process.stdout.write('Loading the demo.\\n');
const client = new pg.Client({ connectionString: process.env.DATABASE_URL });
await client.connect();
await client.query("insert into \\"Company\\" (id, name, zone) values (gen_random_uuid(), 'Half', 'UTC')");
if (process.env.SEED_WAITS) await new Promise((resolve) => setTimeout(resolve, 600000));
await client.query("update \\"Company\\" set name = 'Whole'");
await client.end();
`;

/** One `node scripts/start.mjs` in the copy. */
export interface CopyStart {
  readonly pid: number;
  /** Everything it has said. */
  output(): string;
  /** Waits until it has said something. @throws Error with what it said instead. */
  says(text: RegExp): Promise<RegExpExecArray>;
  /** Where the service is, once it is ready. */
  address(): Promise<string>;
  kill(signal: NodeJS.Signals): void;
  ended: Promise<number | null>;
}

/** The copy. */
export interface ProjectCopy {
  readonly folder: string;
  start(environment?: Record<string, string>): CopyStart;
  /** What the starts share: process ids and the address. */
  lock(): { pid: number; service?: { pid: number } } | undefined;
  /** Process id of the copy's database server. @throws Error when it does not run. */
  databasePid(): number;
  /** Ends what runs and removes everything. */
  remove(): Promise<void>;
}

/** Makes the copy; the project must be built. */
export function projectCopy(): ProjectCopy {
  const folder = mkdtempSync(join(tmpdir(), 'flagway-copy-'));
  // As an ordinary clone: the database's user may pass through it.
  chmodSync(folder, 0o755);
  cpSync(projectRoot, folder, {
    recursive: true,
    filter: (path) => path === projectRoot || !LEFT_OUT.has(basename(path)),
  });
  cpSync(join(projectRoot, '.flagway', 'built'), join(folder, '.flagway', 'built'), { recursive: true });
  symlinkSync(join(projectRoot, 'node_modules'), join(folder, 'node_modules'));
  writeFileSync(join(folder, 'dist', 'prisma', 'seed.js'), SEED);
  const starts: CopyStart[] = [];
  const lockFile = join(folder, '.flagway', 'start.lock');
  const read = <T>(file: string): T => JSON.parse(readFileSync(file, 'utf8')) as T;
  return {
    folder,
    start: (environment = {}) => {
      const start = startIn(folder, environment);
      starts.push(start);
      return start;
    },
    lock: () => (existsSync(lockFile) ? read(lockFile) : undefined),
    databasePid: () => {
      const server = findPostmaster(join(folder, '.flagway', 'postgres', 'data'));
      if (!server) throw new Error('The database of the copy does not run.');
      return server.pid;
    },
    remove: async () => {
      for (const start of starts) start.kill('SIGTERM');
      await Promise.all(starts.map(({ ended }) => ended));
      // A killed start leaves its database running.
      const server = findPostmaster(join(folder, '.flagway', 'postgres', 'data'));
      if (server) await stopPostmaster(server.pid);
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function startIn(folder: string, environment: Record<string, string>): CopyStart {
  const env: NodeJS.ProcessEnv = { ...process.env, ...environment };
  for (const name of Object.keys(env)) {
    if (/^(DATABASE_URL|REDIS_URL|npm_lifecycle_event|NODE_OPTIONS|FLAGWAY_.*)$/.test(name)) delete env[name];
  }
  const child = spawn(process.execPath, ['scripts/start.mjs'], {
    cwd: folder,
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  if (!child.pid) throw new Error('Node could not be started.');
  let output = '';
  let over = false;
  for (const stream of [child.stdout, child.stderr])
    stream.on('data', (chunk: Buffer) => (output += chunk.toString()));
  const ended = new Promise<number | null>((resolve) =>
    child.once('exit', (code) => {
      over = true;
      resolve(code);
    }),
  );
  const says = async (text: RegExp): Promise<RegExpExecArray> => {
    await until(() => text.test(output) || over, 120_000);
    const found = text.exec(output);
    if (!found) throw new Error(`Never said ${String(text)}, but:\n${output}`);
    return found;
  };
  return {
    pid: child.pid,
    output: () => output,
    says,
    address: async () => (await says(/ready at (http:\S+)/))[1] ?? '',
    kill: (signal) => child.kill(signal),
    ended,
  };
}
