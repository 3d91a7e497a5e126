import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { DEMO_PASSWORD } from '../../../prisma/demo/company.js';
import { writeClock } from '../../../prisma/demo/write-clock.js';
import { ApiClient } from '../../support/api-client.js';
import type { FreshDatabase } from '../../support/fresh-database.js';
import { PRESENT } from './demo-database.js';

const MAIN = fileURLToPath(new URL('../../../dist/src/main.js', import.meta.url));

/** The built service in a process of its own, on a copy of the demo. */
export interface DemoService {
  readonly url: string;
  /** A client of the API that is signed in as a person of the demo. */
  readonly client: (role: 'office' | 'foreman' | 'electrician') => Promise<ApiClient>;
  /** Moves the service's clock to a moment. */
  readonly setClock: (iso: string) => void;
  /** Stops the process and starts it again at the same address. */
  readonly restart: () => Promise<void>;
  readonly stop: () => Promise<void>;
}

/** Starts the service on a database as `npm start` does, with its clock standing at the demo's present. */
export async function startDemoService(database: FreshDatabase): Promise<DemoService> {
  const clockFile = join(mkdtempSync(join(tmpdir(), 'flagway-browser-')), 'now');
  writeClock(clockFile, new Date(PRESENT));
  const port = await freePort();
  const environment = {
    PATH: process.env['PATH'] ?? '',
    DATABASE_URL: database.url,
    FLAGWAY_PORT: String(port),
    FLAGWAY_ROLES: 'api',
    FLAGWAY_CLOCK_FILE: clockFile,
    FLAGWAY_LOG: 'error',
  };
  let running = await serve(environment);
  const url = `http://localhost:${port}`;
  return {
    url,
    client: (role) => ApiClient.signedIn(url, `${role}@quillback.example`, DEMO_PASSWORD),
    setClock: (iso) => writeClock(clockFile, new Date(iso)),
    restart: async () => {
      await end(running);
      running = await serve(environment);
    },
    stop: async () => {
      await end(running);
      await database.drop();
    },
  };
}

async function serve(env: NodeJS.ProcessEnv): Promise<ChildProcess> {
  const child = fork(MAIN, { env, stdio: ['ignore', 'inherit', 'inherit', 'ipc'], execArgv: [] });
  const ready = once(child, 'message').then(() => child);
  const failed = once(child, 'exit').then(() => {
    throw new Error('The service ended before it was ready; its messages stand above.');
  });
  return Promise.race([ready, failed]);
}

async function end(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null) return;
  const ended = once(child, 'exit');
  child.kill('SIGTERM');
  await ended;
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });
}
