import { spawn } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Redis } from 'ioredis';
import { freePort } from '../../scripts/postgres/free-port.js';

/*
 * A real Redis of a suite's own: append-only file, no eviction, on a free port, gone with its data afterwards.
 *
 *   const redis = await startRedis();    // throws with what to install when there is no redis-server
 *   ... redis.url ...
 *   await redis.kill();                  // as a power cut: SIGKILL
 *   await redis.start();                 // again on the same port with what its file has kept
 *   await redis.stop();                  // in afterAll
 */

/** A running Redis that can be killed and started again. */
export interface TestRedis {
  readonly url: string;
  readonly port: number;
  kill(): Promise<void>;
  start(): Promise<void>;
  stop(): Promise<void>;
}

const watchdog = fileURLToPath(new URL('../../scripts/postgres/watchdog.mjs', import.meta.url));

interface Running {
  readonly pid: number;
  end(signal: 'kill' | 'stop'): Promise<void>;
}

async function answers(port: number): Promise<void> {
  const client = new Redis(port, '127.0.0.1', {
    maxRetriesPerRequest: null,
    retryStrategy: (times) => (times > 100 ? null : 50),
  });
  client.on('error', () => undefined);
  try {
    await client.ping();
  } catch (cause) {
    throw new Error(`redis-server was started but does not answer on port ${port}.`, { cause });
  } finally {
    client.disconnect();
  }
}

async function launch(folder: string, port: number): Promise<Running> {
  const server = spawn(
    'redis-server',
    [
      ...['--port', String(port), '--bind', '127.0.0.1', '--dir', folder, '--save', ''],
      ...['--appendonly', 'yes', '--appendfsync', 'always', '--maxmemory-policy', 'noeviction'],
    ],
    { stdio: 'ignore' },
  );
  await new Promise<void>((resolve, reject) => {
    server.once('spawn', resolve);
    server.once('error', (cause) =>
      reject(
        new Error('redis-server was not found: install it (Debian: apt-get install redis-server).', {
          cause,
        }),
      ),
    );
  });
  const pid = server.pid ?? 0;
  const ended = new Promise<void>((resolve) => server.once('exit', () => resolve()));
  const guard = spawn(process.execPath, [watchdog, String(pid), folder], {
    stdio: ['pipe', 'ignore', 'ignore'],
    detached: true,
  });
  server.unref();
  guard.unref();
  (guard.stdin as unknown as { unref(): void }).unref();
  await answers(port);
  return {
    pid,
    end: async (how) => {
      if (how === 'kill') {
        // The guard must not remove the data that the next start reads.
        guard.kill('SIGKILL');
        server.kill('SIGKILL');
        await ended;
      } else {
        server.kill('SIGKILL');
        await ended;
        await new Promise<void>((resolve) => {
          guard.once('exit', () => resolve());
          guard.ref();
          guard.stdin.end();
        });
      }
    },
  };
}

/** Starts a Redis on a free port. @throws Error saying what to install when there is none. */
export async function startRedis(): Promise<TestRedis> {
  const folder = mkdtempSync(join(tmpdir(), 'flagway-redis-'));
  const port = await freePort();
  let running: Running | undefined = await launch(folder, port);
  return {
    url: `redis://127.0.0.1:${port}`,
    port,
    kill: async () => {
      await running?.end('kill');
      running = undefined;
    },
    start: async () => {
      running ??= await launch(folder, port);
    },
    stop: async () => {
      running ??= await launch(folder, port);
      await running.end('stop');
      running = undefined;
    },
  };
}
