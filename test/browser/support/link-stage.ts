import { mkdtempSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect } from '@jest/globals';
import { PrismaPg } from '@prisma/adapter-pg';
import type { Browser } from 'playwright-core';
import { PrismaClient } from '../../../src/generated/prisma/client.js';
import type { Database } from '../../../src/platform/database/database.js';
import { ApiClient } from '../../support/api-client.js';
import { startBrowser } from '../../support/browser.js';
import { freshDatabase } from '../../support/fresh-database.js';
import { startMailServer, type TestMailServer } from '../../support/mail-server.js';
import { type ServiceProcess, startProcess } from '../../support/service-process.js';
import { thrown } from './pages.js';

/*
 * The built service with API, worker and a real mail server, on a database that is empty: what a suite needs it enters.
 */

export interface LinkStage {
  readonly url: string;
  readonly database: Database;
  readonly mail: TestMailServer;
  readonly browser: Browser;
  readonly signIn: (email: string, password: string) => Promise<ApiClient>;
}

/** Sets the stage before the tests of the suite that calls it and clears it after them. */
export function linkStage(now: string): LinkStage {
  const set: Partial<LinkStage> & { service?: ServiceProcess; drop?: () => Promise<void> } = {};
  beforeAll(async () => {
    const fresh = await freshDatabase();
    const mail = await startMailServer();
    const port = await freePort();
    const clock = join(mkdtempSync(join(tmpdir(), 'flagway-links-')), 'now');
    writeFileSync(clock, now);
    const url = `http://localhost:${port}`;
    const service = await startProcess({
      DATABASE_URL: fresh.url,
      FLAGWAY_PORT: String(port),
      FLAGWAY_ORIGIN: url,
      FLAGWAY_CLOCK_FILE: clock,
      FLAGWAY_SMTP_URL: mail.url,
      FLAGWAY_RELAY_MILLISECONDS: '50',
    });
    const client = new PrismaClient({ adapter: new PrismaPg({ connectionString: fresh.url }) });
    Object.assign(set, {
      url,
      mail,
      service,
      database: client,
      browser: await startBrowser(),
      signIn: (email: string, password: string) => ApiClient.signedIn(url, email, password),
      drop: fresh.drop,
    });
  }, 120_000);
  afterAll(async () => {
    await set.browser?.close();
    await set.service?.stop();
    await set.database?.$disconnect();
    await set.mail?.stop();
    await set.drop?.();
    expect(thrown).toEqual([]);
  });
  return new Proxy({} as LinkStage, {
    get: (_, name: keyof LinkStage) => {
      const one = set[name];
      if (!one) throw new Error('The stage is set before the first test; use it within tests.');
      return one;
    },
  });
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
