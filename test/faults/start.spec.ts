import { afterAll, beforeAll, describe, expect, it, jest } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import pg from 'pg';
import { alive, until } from '../../scripts/postgres/postmaster.js';
import { type CopyStart, type ProjectCopy, projectCopy } from '../support/project-copy.js';

// Some of these start the whole service twice.
jest.setTimeout(240_000);

describe('npm start', () => {
  let copy: ProjectCopy;
  let start: CopyStart;
  let address: string;

  const ask = async (sql: string): Promise<unknown[]> => {
    const { port, adminPassword } = JSON.parse(
      readFileSync(join(copy.folder, '.flagway', 'postgres.json'), 'utf8'),
    ) as { port: number; adminPassword: string };
    const client = new pg.Client({
      host: '127.0.0.1',
      port,
      user: 'postgres',
      password: adminPassword,
      database: 'flagway',
    });
    await client.connect();
    try {
      return (await client.query(sql)).rows;
    } finally {
      await client.end();
    }
  };
  /** The service's process; never 0, which would mean the group of this very process. */
  const servicePid = (): number => {
    const pid = copy.lock()?.service?.pid;
    if (!pid) throw new Error('There is no service.');
    return pid;
  };
  const ready = async (): Promise<number> => (await fetch(`${address}/health/ready`)).status;
  const isReady = async (): Promise<boolean> => {
    for (let tries = 0; tries < 400; tries += 1) {
      if ((await ready().catch(() => 0)) === 200) return true;
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
    return false;
  };

  beforeAll(() => {
    copy = projectCopy();
  });
  afterAll(() => copy.remove());

  it('begins the demo anew when it was killed while loading it', async () => {
    start = copy.start({ SEED_WAITS: 'yes' });
    await start.says(/Loading the demo/);
    // Not before the half-loaded company is there.
    let half: unknown[] = [];
    for (let tries = 0; tries < 400 && half.length === 0; tries += 1) {
      half = await ask('select name from "Company"').catch(() => []);
    }
    expect(half).toEqual([{ name: 'Half' }]);
    start.kill('SIGKILL');
    await start.ended;
    const loader = Number(readFileSync(join(copy.folder, 'seed.pid'), 'utf8'));
    expect(await until(() => !alive(loader), 10_000)).toBe(true);
    start = copy.start();
    address = await start.address();
    expect(await ask('select name from "Company"')).toEqual([{ name: 'Whole' }]);
  });

  it('serves the board', async () => {
    const page = await fetch(address);
    expect(page.status).toBe(200);
    expect(await page.text()).toContain('<!doctype html>');
  });

  it('says where the first one serves when it is called twice', async () => {
    const second = copy.start();
    expect(await second.ended).toBe(0);
    expect(second.output()).toContain(`runs at ${address} already`);
    expect(await ready()).toBe(200);
  });

  it('is up again at the same address with its data after it was killed', async () => {
    await ask(`update "Company" set name = 'Kept'`);
    start.kill('SIGKILL');
    await start.ended;
    start = copy.start();
    expect(await start.address()).toBe(address);
    expect(await ask('select name from "Company"')).toEqual([{ name: 'Kept' }]);
  });

  it('is up again when service and database are killed with it', async () => {
    const victims = [start.pid, servicePid(), copy.databasePid()];
    for (const pid of victims) process.kill(pid, 'SIGKILL');
    expect(await until(() => victims.every((pid) => !alive(pid)), 10_000)).toBe(true);
    start = copy.start();
    expect(await start.address()).toBe(address);
    expect(await ask('select name from "Company"')).toEqual([{ name: 'Kept' }]);
  });

  it('brings the database back when only that is killed, while the service goes on', async () => {
    const service = servicePid();
    process.kill(copy.databasePid(), 'SIGKILL');
    await start.says(/database had been killed and was started again/);
    expect(await isReady()).toBe(true);
    expect(servicePid()).toBe(service);
  });

  it('says so and ends when the service is killed', async () => {
    process.kill(servicePid(), 'SIGKILL');
    expect(await start.ended).toBe(1);
    expect(start.output()).toContain('The service ended by itself (SIGKILL). Nothing is lost');
    expect(copy.lock()).toBeUndefined();
  });

  it('stops everything when it is asked to', async () => {
    start = copy.start();
    await start.address();
    const parts = [servicePid(), copy.databasePid()];
    start.kill('SIGINT');
    expect(await start.ended).toBe(0);
    expect(parts.filter(alive)).toEqual([]);
    expect(copy.lock()).toBeUndefined();
  });
});
