import 'reflect-metadata';
import { randomUUID } from 'node:crypto';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Global, type INestApplicationContext, Module } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import type { Company } from '../../src/generated/prisma/client.js';
import { JobReader } from '../../src/jobs/jobs.face.js';
import { PeopleModule } from '../../src/people/people.module.js';
import type { Change } from '../../src/platform/change/change.js';
import { ChangeRunner } from '../../src/platform/change/change-runner.js';
import { contextOf } from '../../src/platform/context.js';
import { Database } from '../../src/platform/database/database.js';
import { setLogLevel } from '../../src/platform/log.js';
import { PlatformModule } from '../../src/platform/platform.module.js';
import { Relay } from '../../src/worker/relay.js';
import { Sweep } from '../../src/worker/sweep.js';
import { Worker } from '../../src/worker/worker.js';
import { WorkerModule } from '../../src/worker/worker.module.js';
import { freshDatabase } from './fresh-database.js';

/*
 * The worker without an API: relay, consumer and sweep on a database of their own, with a clock the test moves.
 *
 *   const bench = await workerBench({ mailUrl: mail.url });
 *   await bench.change(company, (change) => change.later('hookup-ready', {...}));
 *   const stop = await bench.worker.start();
 *   await bench.stop();                             // in afterAll
 */

/** What the pages of notices and reminders read jobs with; re-planning is left out, tests set the dates themselves. */
@Global()
@Module({ providers: [JobReader], exports: [JobReader] })
class ReaderModule {}

@Module({ imports: [PlatformModule, PeopleModule, ReaderModule, WorkerModule] })
class BenchModule {}

/** The parts of a worker, and a way to make changes. */
export interface WorkerBench {
  readonly app: INestApplicationContext;
  readonly database: Database;
  readonly databaseUrl: string;
  readonly worker: Worker;
  readonly relay: Relay;
  readonly sweep: Sweep;
  setClock(iso: string): void;
  /** Runs a change as the service does, with the reminders that follow from it. */
  change<T>(company: Company, work: (change: Change) => Promise<T>): Promise<T>;
  /** Closes everything and drops the database. */
  stop(): Promise<void>;
}

/** Makes the parts of a worker; nothing works before `worker.start()`. */
export async function workerBench({
  now = '2031-01-06T14:00:00Z',
  mailUrl,
  redisUrl,
  databaseUrl,
  relayMilliseconds = 50,
}: {
  now?: string;
  mailUrl?: string;
  redisUrl?: string;
  /** The database of another bench, which stays that one's to drop. */
  databaseUrl?: string;
  relayMilliseconds?: number;
} = {}): Promise<WorkerBench> {
  const fresh = databaseUrl ? { url: databaseUrl, drop: () => Promise.resolve() } : await freshDatabase();
  const clockFile = join(mkdtempSync(join(tmpdir(), 'flagway-clock-')), 'now');
  writeFileSync(clockFile, now);
  const settings: Record<string, string> = {
    DATABASE_URL: fresh.url,
    FLAGWAY_CLOCK_FILE: clockFile,
    FLAGWAY_ORIGIN: 'http://flagway.example.test',
    FLAGWAY_QUEUE_PREFIX: `t${randomUUID()}`,
    FLAGWAY_RELAY_MILLISECONDS: String(relayMilliseconds),
    FLAGWAY_SWEEP_MILLISECONDS: '60000',
    ...(mailUrl ? { FLAGWAY_SMTP_URL: mailUrl } : {}),
    ...(redisUrl ? { REDIS_URL: redisUrl } : {}),
  };
  Object.assign(process.env, settings);
  setLogLevel('error');
  const app = await NestFactory.createApplicationContext(BenchModule, { logger: false, abortOnError: false });
  for (const name of Object.keys(settings)) delete process.env[name];
  const database = app.get(Database);
  return {
    app,
    database,
    databaseUrl: fresh.url,
    worker: app.get(Worker),
    relay: app.get(Relay),
    sweep: app.get(Sweep),
    setClock: (iso) => writeFileSync(clockFile, iso),
    change: (company, work) =>
      app
        .get(ChangeRunner)
        .runInternal(
          contextOf({ companyId: company.id, personId: '', role: 'office', name: 'test' }),
          async (change) => {
            const result = await work(change);
            change.record({ action: 'tested', subjectType: 'company', subjectId: company.id });
            return result;
          },
        ),
    stop: async () => {
      await app.close();
      await fresh.drop();
    },
  };
}
