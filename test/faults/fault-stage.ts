import { randomUUID } from 'node:crypto';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseConfig } from '../../src/platform/config/config.js';
import { Database } from '../../src/platform/database/database.js';
import { WorkQueue } from '../../src/platform/queue/work-queue.js';
import { type BareJob, makeBareJob } from '../support/bare-job.js';
import { type Answer, ApiClient } from '../support/api-client.js';
import { makeCompany, TEST_PASSWORD, type TestCompany } from '../support/company.js';
import { freshDatabase } from '../support/fresh-database.js';
import { type CaughtMail, startMailServer, type TestMailServer } from '../support/mail-server.js';
import { startRedis } from '../support/redis.js';
import { type ServiceProcess, startProcess } from '../support/service-process.js';

/** A database, a mail server and a company with a job whose hookup lacks only its leads; processes are started on them. */
export interface FaultStage {
  readonly database: Database;
  readonly mail: TestMailServer;
  readonly house: TestCompany;
  /** A further job in the same state. */
  job(): Promise<BareJob>;
  setClock(iso: string): void;
  /** Starts a process of the service; it is killed at the end when it still runs. */
  start(role: 'api' | 'worker', faultPoint?: string): Promise<ServiceProcess>;
  /** Entries that the queue holds. */
  queued(): Promise<number>;
  /** Hookup notices that the mail server has taken, of one job. */
  readyMails(bare: BareJob): CaughtMail[];
  close(): Promise<void>;
}

/** Sets the stage, with the queue on the server of choice. */
export async function setFaultStage(queueOn: 'postgresql' | 'redis'): Promise<FaultStage> {
  const fresh = await freshDatabase();
  const redis = queueOn === 'redis' ? await startRedis() : null;
  const mail = await startMailServer();
  const clockFile = join(mkdtempSync(join(tmpdir(), 'flagway-clock-')), 'now');
  const setClock = (iso: string): void => writeFileSync(clockFile, iso);
  setClock('2031-01-06T14:00:00Z');
  const settings = {
    DATABASE_URL: fresh.url,
    ...(redis ? { REDIS_URL: redis.url } : {}),
    FLAGWAY_CLOCK_FILE: clockFile,
    FLAGWAY_QUEUE_PREFIX: `t${randomUUID()}`,
    FLAGWAY_SMTP_URL: mail.url,
    FLAGWAY_RELAY_MILLISECONDS: '100',
    FLAGWAY_SWEEP_MILLISECONDS: '500',
  };
  const database = new Database(parseConfig({ DATABASE_URL: fresh.url }));
  const house = await makeCompany(database);
  const queue = new WorkQueue(parseConfig(settings));
  await queue.open();
  const running = new Set<ServiceProcess>();
  return {
    database,
    mail,
    house,
    setClock,
    job: async () => {
      const bare = await makeBareJob(database, house.company.id);
      await database.heatingSet.update({
        where: { id: bare.heatingSet.id },
        data: { receivedAt: new Date('2031-01-02T14:00:00Z') },
      });
      await database.cableReading.create({
        data: {
          companyId: house.company.id,
          heatingSetId: bare.heatingSet.id,
          stage: 'laid',
          areaId: bare.area.id,
          at: new Date('2031-01-05T14:00:00Z'),
          ohms: 34.9,
          megaohms: 900,
          testVolts: 500,
          cableTempF: 68,
          accepted: true,
          finding: [],
        },
      });
      return bare;
    },
    start: async (role, faultPoint) => {
      const started = await startProcess({
        ...settings,
        FLAGWAY_ROLES: role,
        ...(faultPoint ? { FLAGWAY_FAULT_POINT: faultPoint } : {}),
      });
      running.add(started);
      return started;
    },
    queued: () => queue.held(),
    readyMails: (bare) =>
      mail
        .messages()
        .filter(({ subject }) => subject.startsWith('Ready for hookup') && subject.endsWith(bare.job.name)),
    close: async () => {
      for (const one of running) await one.kill();
      await queue.onModuleDestroy();
      await database.$disconnect();
      await mail.stop();
      await redis?.stop();
      await fresh.drop();
    },
  };
}

const RECORD_LEADS = `mutation($input: RecordLeadsInput!) {
  recordLeads(input: $input) {
    __typename
    ... on HookupChanged { hookup { id state readyCount } }
    ... on Refusal { code message }
  }
}`;

/** What recording the leads answers when it makes the hookup ready. */
export const BECAME_READY = {
  data: { recordLeads: { __typename: 'HookupChanged', hookup: { state: 'ready', readyCount: 1 } } },
};

/** Records the leads through the API as the foreman, which meets the last needs of the hookup. */
export async function recordLeads(
  { house }: FaultStage,
  api: ServiceProcess,
  bare: BareJob,
  clientKey: string,
): Promise<Answer> {
  const client = await ApiClient.signedIn(api.url, house.people.foreman.email, TEST_PASSWORD);
  return client.ask(RECORD_LEADS, { input: leadsOf(bare, clientKey) });
}

/** The input that meets the last needs of a hookup: its leads. */
function leadsOf(bare: BareJob, clientKey: string) {
  return {
    clientKey,
    hookupId: bare.hookup.id,
    coldLeadThrough: true,
    coldLeadFreeInches: 12,
    sensorThrough: true,
    leadsLabelled: true,
  };
}
