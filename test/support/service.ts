import 'reflect-metadata';
import { randomUUID } from 'node:crypto';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { bootApi, type Service } from '../../src/boot.js';
import { Database } from '../../src/platform/database/database.js';
import { setLogLevel } from '../../src/platform/log.js';
import { ApiClient } from './api-client.js';
import { freshDatabase } from './fresh-database.js';

/*
 * Boots the real service in this process on a database of its own, with a clock the test moves.
 *
 *   const service = await startService();          // in beforeAll; about a second
 *   const office = await service.signIn(person.email, 'password');
 *   service.setClock('2031-01-06T14:00:00Z');
 *   await service.stop();                           // in afterAll
 */

/** A booted service with its database, clock and clients. */
export interface TestService extends Service {
  readonly database: Database;
  setClock(iso: string): void;
  /** A client that is signed in; throws when the sign-in fails. */
  signIn(email: string, password: string): Promise<ApiClient>;
  /** A client without a session. */
  anonymous(): ApiClient;
  /** Closes the service and drops its database. */
  stop(): Promise<void>;
}

export async function startService({
  now = '2031-01-06T14:00:00Z',
  environment = {},
}: { now?: string; environment?: Record<string, string> } = {}): Promise<TestService> {
  const fresh = await freshDatabase();
  const clockFile = join(mkdtempSync(join(tmpdir(), 'flagway-clock-')), 'now');
  writeFileSync(clockFile, now);
  const settings: Record<string, string> = {
    DATABASE_URL: fresh.url,
    FLAGWAY_PORT: '0',
    FLAGWAY_ROLES: 'api',
    FLAGWAY_CLOCK_FILE: clockFile,
    FLAGWAY_QUEUE_PREFIX: `t${randomUUID()}`,
    ...environment,
  };
  Object.assign(process.env, settings);
  setLogLevel('error');
  const service = await bootApi({ board: false });
  return {
    ...service,
    database: service.app.get(Database),
    setClock: (iso) => writeFileSync(clockFile, iso),
    signIn: (email, password) => ApiClient.signedIn(service.url, email, password),
    anonymous: () => new ApiClient(service.url),
    stop: async () => {
      await service.close();
      for (const name of Object.keys(settings)) delete process.env[name];
      await fresh.drop();
    },
  };
}
