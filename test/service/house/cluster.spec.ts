import { chmodSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from '@jest/globals';
import pg from 'pg';
import { databaseAccount } from '../../../scripts/postgres/account.js';
import { findBinaries } from '../../../scripts/postgres/binaries.js';
import { dataOf, runCluster, type Cluster } from '../../../scripts/postgres/cluster.js';
import { freePort } from '../../../scripts/postgres/free-port.js';
import { outsideFolder } from '../../../scripts/postgres/outside-folder.js';
import { findPostmaster, orphansOf, stopPostmaster, until } from '../../../scripts/postgres/postmaster.js';

describe('the project’s own database server', () => {
  let folder: string;
  let cluster: Cluster;

  beforeEach(() => {
    folder = mkdtempSync(join(tmpdir(), 'flagway-cluster-'));
    chmodSync(folder, 0o755);
    const account = databaseAccount();
    cluster = {
      folder: join(folder, 'postgres'),
      account,
      binaries: findBinaries(account, outsideFolder()),
      password: 'a test’s own',
    };
  });

  afterEach(async () => {
    const server = findPostmaster(dataOf(cluster));
    if (server) await stopPostmaster(server.pid);
    rmSync(folder, { recursive: true, force: true });
  });

  const run = () => runCluster(cluster, freePort);

  async function ask(port: number, sql: string): Promise<unknown[]> {
    const client = new pg.Client({
      host: '127.0.0.1',
      port,
      user: 'postgres',
      password: cluster.password,
      database: 'postgres',
    });
    client.on('error', () => undefined);
    await client.connect();
    try {
      return (await client.query(sql)).rows;
    } finally {
      await client.end();
    }
  }

  it('is taken over when it runs already', async () => {
    const first = await run();
    expect(await run()).toEqual(first);
  });

  it('refuses who does not know the password', async () => {
    const { port } = await run();
    const stranger = new pg.Client({
      host: '127.0.0.1',
      port,
      user: 'postgres',
      password: 'guess',
      database: 'postgres',
    });
    await expect(stranger.connect()).rejects.toThrow(/password/);
  });

  it('keeps what was committed when it is killed, and starts again', async () => {
    const killed = await run();
    await ask(killed.port, 'create table kept as select 42 as answer');
    // A session that is open at that moment, so that a process outlives its server for a while.
    const open = new pg.Client({
      host: '127.0.0.1',
      port: killed.port,
      user: 'postgres',
      password: cluster.password,
      database: 'postgres',
    });
    open.on('error', () => undefined);
    await open.connect();
    const busy = open.query('select pg_sleep(60)').catch(() => undefined);
    process.kill(killed.pid, 'SIGKILL');
    expect(await until(() => findPostmaster(dataOf(cluster)) === undefined, 5000)).toBe(true);
    const again = await run();
    await busy;
    expect(again.pid).not.toBe(killed.pid);
    expect(await ask(again.port, 'select answer from kept')).toEqual([{ answer: 42 }]);
  });

  it('is not misled by a note whose number another process has now', async () => {
    const first = await run();
    await ask(first.port, 'create table kept as select 1 as one');
    const note = join(dataOf(cluster), 'postmaster.pid');
    const text = readFileSync(note, 'utf8');
    await stopPostmaster(first.pid);
    writeFileSync(note, text.replace(/^\d+/, String(process.pid)));
    const again = await run();
    expect(await ask(again.port, 'select one from kept')).toEqual([{ one: 1 }]);
  });

  it('begins anew when making the data folder was cut short', async () => {
    const half = `${dataOf(cluster)}.new`;
    mkdirSync(half, { recursive: true });
    writeFileSync(join(half, 'PG_VERSION'), '18\n');
    const { port } = await run();
    expect(await ask(port, 'select 1 as one')).toEqual([{ one: 1 }]);
    expect(existsSync(half)).toBe(false);
  });

  it('says what the log says when it cannot start', async () => {
    await run().then(({ pid }) => stopPostmaster(pid));
    const broken: Cluster = { ...cluster, settings: ['shared_buffers=none'] };
    await expect(runCluster(broken, freePort)).rejects.toThrow(
      /did not start.*invalid value.*shared_buffers/s,
    );
  });

  it('leaves nothing running when it is stopped', async () => {
    const { pid } = await run();
    await stopPostmaster(pid);
    expect(findPostmaster(dataOf(cluster))).toBeUndefined();
    expect(await until(() => orphansOf(dataOf(cluster)).length === 0, 5000)).toBe(true);
  });
});
