import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { PrismaPg } from '@prisma/adapter-pg';
import { PrismaClient } from '../../src/generated/prisma/client.js';
import { makeDemoCompany } from '../../prisma/demo/company.js';
import { writeClock } from '../../prisma/demo/write-clock.js';
import { startMailServer, type TestMailServer } from '../../test/support/mail-server.js';
import { freePort } from '../postgres/free-port.js';
import { throwawayPostgres } from '../postgres/throwaway.js';
import { projectRoot } from '../project-root.js';

/** A freshly started service with everything real around it: its own database, a mail server, a clock of its own. */
export interface Stage {
  readonly url: string;
  readonly mail: TestMailServer;
  setClock(at: Date): void;
  /** Waits until the worker has handed on everything that is due. */
  settled(): Promise<void>;
  stop(): Promise<void>;
}

const DATABASE = 'walkthrough';

/** Starts it. The clock stands at `present` and moves only by `setClock`. */
export async function setStage(present: Date): Promise<Stage> {
  const [postgres, mail] = await Promise.all([throwawayPostgres(), startMailServer()]);
  const databaseUrl = `${postgres.url}/${DATABASE}`;
  await createDatabase(postgres.url);
  await run('npx', ['tsx', 'scripts/migrate/cli.ts', 'apply'], { DATABASE_URL: databaseUrl });
  const prisma = new PrismaClient({ adapter: new PrismaPg({ connectionString: databaseUrl }) });
  await makeDemoCompany(prisma as never);
  const clockFile = join(mkdtempSync(join(tmpdir(), 'flagway-walkthrough-')), 'now');
  let now = present;
  const setClock = (at: Date) => {
    now = at;
    writeClock(clockFile, at);
  };
  setClock(present);
  const port = await freePort();
  const service = spawn(process.execPath, ['dist/src/main.js'], {
    cwd: projectRoot,
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
    env: {
      ...process.env,
      DATABASE_URL: databaseUrl,
      FLAGWAY_PORT: String(port),
      FLAGWAY_ROLES: 'api,worker',
      FLAGWAY_CLOCK_FILE: clockFile,
      FLAGWAY_SMTP_URL: mail.url,
      FLAGWAY_RELAY_MILLISECONDS: '100',
      FLAGWAY_SWEEP_MILLISECONDS: '2000',
      FLAGWAY_LOG: 'warn',
    },
  });
  await ready(service);
  return {
    url: `http://127.0.0.1:${port}`,
    mail,
    setClock,
    settled: async () => {
      for (let waited = 0; waited < 300; waited += 1) {
        const open = await prisma.outbox.count({ where: { doneAt: null, dueAt: { lte: now } } });
        const claimed = await prisma.delivery.count({
          where: { state: 'claimed', OR: [{ notBefore: null }, { notBefore: { lte: now } }] },
        });
        if (open + claimed === 0) return;
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
      throw new Error('The worker did not finish what was due within 30 s');
    },
    stop: async () => {
      service.kill('SIGTERM');
      await once(service, 'exit');
      await prisma.$disconnect();
      await mail.stop();
      await postgres.stop();
    },
  };
}

async function createDatabase(url: string): Promise<void> {
  const client = new pg.Client({ connectionString: `${url}/postgres` });
  await client.connect();
  await client.query(`create database ${DATABASE}`);
  await client.end();
}

async function run(command: string, args: string[], environment: Record<string, string>): Promise<void> {
  const child = spawn(command, args, {
    cwd: projectRoot,
    stdio: ['ignore', 'ignore', 'inherit'],
    env: { ...process.env, ...environment },
  });
  const [code] = (await once(child, 'exit')) as [number];
  if (code !== 0) throw new Error(`${command} ${args.join(' ')} ended with ${code}`);
}

/** The service says over the channel to its parent when it serves. @throws Error when it ends before. */
async function ready(service: ChildProcess): Promise<void> {
  await Promise.race([
    once(service, 'message'),
    once(service, 'exit').then(([code]) => {
      throw new Error(`The service ended with ${String(code)} before it served`);
    }),
  ]);
}
