import { spawn, spawnSync } from 'node:child_process';
import {
  chownSync,
  closeSync,
  existsSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import type { Account } from './account.js';
import type { Binaries } from './binaries.js';
import { alive, findPostmaster, orphansOf, stopPostmaster, until, type Postmaster } from './postmaster.js';

/** Where a database server keeps its things and who runs it. */
export interface Cluster {
  /** Folder of the server's own: `data` and `log` stand in it. */
  readonly folder: string;
  readonly account: Account;
  readonly binaries: Binaries;
  /** Password of the superuser `postgres`; used once, when the data folder is made. */
  readonly password: string;
  /** Further settings, `name=value`. */
  readonly settings?: readonly string[];
}

const LOG_LIMIT = 5_000_000;

export const dataOf = (cluster: Pick<Cluster, 'folder'>): string => join(cluster.folder, 'data');
const logOf = (cluster: Cluster): string => join(cluster.folder, 'log');

const environment = (): NodeJS.ProcessEnv => ({ PATH: process.env['PATH'], LC_ALL: 'C', TZ: 'UTC' });

function give(path: string, account: Account): void {
  if (account.ids) chownSync(path, account.ids.uid, account.ids.gid);
}

/** Makes the data folder when there is none; a start that dies on the way leaves nothing that looks finished. */
function makeData(cluster: Cluster): void {
  const data = dataOf(cluster);
  if (existsSync(join(data, 'PG_VERSION'))) return;
  mkdirSync(cluster.folder, { recursive: true });
  give(cluster.folder, cluster.account);
  const half = `${data}.new`;
  const secret = join(cluster.folder, 'secret.new');
  rmSync(half, { recursive: true, force: true });
  rmSync(data, { recursive: true, force: true });
  rmSync(secret, { force: true });
  writeFileSync(secret, `${cluster.password}\n`, { mode: 0o600 });
  give(secret, cluster.account);
  const made = spawnSync(
    cluster.binaries.initdb,
    [
      `--pgdata=${half}`,
      '--auth=scram-sha-256',
      '--username=postgres',
      `--pwfile=${secret}`,
      '--encoding=UTF8',
      '--locale-provider=builtin',
      '--builtin-locale=C.UTF-8',
      '--locale=C',
    ],
    { ...cluster.account.ids, cwd: cluster.folder, env: environment(), encoding: 'utf8' },
  );
  rmSync(secret, { force: true });
  if (made.status !== 0) {
    throw new Error(
      `The database folder ${data} could not be made. Free some disk space or set DATABASE_URL to a server of your own.\n` +
        `${made.error?.message ?? ''}${made.stdout}${made.stderr}`,
    );
  }
  renameSync(half, data);
}

/** Clears away what a killed server left: its processes, then its note. */
async function clearRemains(cluster: Cluster): Promise<void> {
  const data = dataOf(cluster);
  const gone = (): boolean => orphansOf(data).length === 0;
  // They notice by themselves that their server is gone.
  if (!(await until(gone, 3000))) {
    for (const signal of ['SIGQUIT', 'SIGKILL'] as const) {
      for (const pid of orphansOf(data)) process.kill(pid, signal);
      if (await until(gone, 3000)) break;
    }
  }
  rmSync(join(data, 'postmaster.pid'), { force: true });
}

async function launch(cluster: Cluster, port: number): Promise<Postmaster> {
  const data = dataOf(cluster);
  const logFile = logOf(cluster);
  if (existsSync(logFile) && statSync(logFile).size > LOG_LIMIT) renameSync(logFile, `${logFile}.old`);
  const log = openSync(logFile, 'a', 0o640);
  const settings = ['listen_addresses=127.0.0.1', 'unix_socket_directories=', ...(cluster.settings ?? [])];
  const child = spawn(
    cluster.binaries.postgres,
    ['-D', data, '-p', String(port), ...settings.flatMap((setting) => ['-c', setting])],
    // Detached: a Ctrl-C at the terminal must not reach the server before those who use it.
    { ...cluster.account.ids, cwd: data, detached: true, stdio: ['ignore', log, log], env: environment() },
  );
  closeSync(log);
  child.unref();
  let failure: Error | undefined;
  child.once('error', (error) => (failure = error));
  const pid = child.pid;
  const ended = (): boolean =>
    pid === undefined || failure !== undefined || child.exitCode !== null || !alive(pid);
  await until(() => ended() || (findPostmaster(data)?.ready ?? false), 120_000);
  const server = findPostmaster(data);
  if (!server?.ready || server.pid !== pid) {
    const tail = existsSync(logFile)
      ? readFileSync(logFile, 'utf8').trim().split('\n').slice(-12).join('\n')
      : '';
    throw new Error(
      `The database server did not start. ${failure?.message ?? ''}\nThe last lines of ${logFile}:\n${tail}`,
    );
  }
  return server;
}

/**
 * Gives the running server of a folder: the one that runs already, or a new one. What was killed in the middle is
 * cleared away first, so this is safe after any crash.
 *
 * @param port gives a free port, asked only when a server is started.
 */
export async function runCluster(cluster: Cluster, port: () => Promise<number>): Promise<Postmaster> {
  const data = dataOf(cluster);
  const running = findPostmaster(data);
  if (running) {
    if (await until(() => findPostmaster(data)?.ready ?? true, 60_000)) {
      const server = findPostmaster(data);
      if (server) return server;
    } else {
      await stopPostmaster(running.pid, 10_000);
    }
  }
  makeData(cluster);
  await clearRemains(cluster);
  return launch(cluster, await port());
}
