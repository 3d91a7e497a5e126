import { afterAll, beforeAll, beforeEach, describe, expect, test } from '@jest/globals';
import { Redis } from 'ioredis';
import { WorkQueue } from '../../src/platform/queue/work-queue.js';
import { type BareJob, makeBareJob } from '../support/bare-job.js';
import { makeCompany, type TestCompany } from '../support/company.js';
import { becomeReady, loseNeed } from '../support/hookup-changes.js';
import { startMailServer, type TestMailServer } from '../support/mail-server.js';
import { startRedis, type TestRedis } from '../support/redis.js';
import { until } from '../support/until.js';
import { workerBench, type WorkerBench } from '../support/worker.js';

/** From the outbox to the mail server, on both queue servers: a real relay, consumer, sweep and SMTP server. */
describe.each(['postgresql', 'redis'] as const)('outbox to mail over %s', (backend) => {
  let redis: TestRedis | undefined;
  let mail: TestMailServer;
  let bench: WorkerBench;
  let house: TestCompany;
  let bare: BareJob;
  let stopWorker: (() => Promise<void>) | undefined;

  beforeAll(async () => {
    if (backend === 'redis') redis = await startRedis();
    mail = await startMailServer();
    bench = await workerBench({ mailUrl: mail.url, ...(redis ? { redisUrl: redis.url } : {}) });
  });

  beforeEach(async () => {
    await stopWorker?.();
    stopWorker = undefined;
    mail.clear();
    house = await makeCompany(bench.database);
    bare = await makeBareJob(bench.database, house.company.id);
  });

  afterAll(async () => {
    await stopWorker?.();
    await bench.stop();
    await mail.stop();
    await redis?.stop();
  });

  const startWorker = async (): Promise<void> => {
    stopWorker = await bench.worker.start();
  };
  const becomesReady = () => bench.change(house.company, (change) => becomeReady(change, bare.hookup.id));
  const losesNeed = () => bench.change(house.company, (change) => loseNeed(change, bare.hookup.id));
  const unsent = () =>
    bench.database.delivery.count({ where: { companyId: house.company.id, state: { not: 'sent' } } });
  const undone = () => bench.database.outbox.count({ where: { companyId: house.company.id, doneAt: null } });
  const settled = () => until('everything is done', async () => (await undone()) + (await unsent()) === 0);

  /** The queue as after a disaster: nothing in it. */
  async function loseQueue(): Promise<void> {
    if (redis) {
      const client = new Redis(redis.url);
      await client.flushall();
      await client.quit();
      return;
    }
    const [row] = await bench.database.$queryRaw<{ schema: string }[]>`
      select schemaname as schema from pg_tables where tablename = 'job' and schemaname like 'queue_%'`;
    await bench.database.$executeRawUnsafe(`delete from "${row?.schema}".job`);
  }

  test('sends exactly one notice when a hookup becomes ready, to the electrician', async () => {
    await startWorker();
    await becomesReady();
    const message = await mail.waitFor(({ to }) => to === house.people.electrician.email);
    await settled();
    expect(message.subject).toBe(`Ready for hookup: job ${bare.job.number}, ${bare.job.name}`);
    expect(mail.messages()).toHaveLength(1);
    const [delivery] = await bench.database.delivery.findMany({ where: { companyId: house.company.id } });
    expect(delivery).toMatchObject({ state: 'sent', attempts: 1, error: null });
    expect(delivery?.sentAt).toEqual(new Date('2031-01-06T14:00:00Z'));
  });

  test('withdraws it and sends it again when the hookup is ready again', async () => {
    await startWorker();
    await becomesReady();
    await settled();
    await losesNeed();
    await settled();
    await becomesReady();
    await settled();
    expect(mail.messages().map(({ subject }) => subject.split(':')[0])).toEqual([
      'Ready for hookup',
      'Not ready for hookup any more',
      'Ready for hookup',
    ]);
    expect(mail.messages()[2]?.text).toContain('met again');
  });

  test('takes up what was committed while no worker ran', async () => {
    await becomesReady();
    expect(await undone()).toBe(1);
    await startWorker();
    await settled();
    expect(mail.messages()).toHaveLength(1);
  });

  test('leaves rows alone that are not due', async () => {
    await bench.change(house.company, (change) =>
      change.later(
        'hookup-ready',
        { hookupId: bare.hookup.id, readyCount: 1 },
        new Date('2031-01-06T15:00:00Z'),
      ),
    );
    await bench.app.get(WorkQueue).open();
    expect(await bench.relay.run()).toBe(0);
    bench.setClock('2031-01-06T15:00:00Z');
    expect(await bench.relay.run()).toBe(1);
    bench.setClock('2031-01-06T14:00:00Z');
    await startWorker();
    await settled();
  });

  test('moves each row once when several relays run at the same time', async () => {
    await bench.app.get(WorkQueue).open();
    for (let count = 0; count < 5; count += 1) await becomesReady();
    const moved = await Promise.all([bench.relay.run(), bench.relay.run(), bench.relay.run()]);
    expect(moved.reduce((sum, count) => sum + count, 0)).toBe(5);
    await startWorker();
    await settled();
    // Only the latest readiness still holds; the four before it were overtaken and tell nobody.
    expect(mail.messages()).toHaveLength(1);
  });

  test('finds by its sweep what the queue has lost, and sends it once', async () => {
    await becomesReady();
    await bench.app.get(WorkQueue).open();
    await bench.relay.run();
    await loseQueue();
    expect(await bench.app.get(WorkQueue).held()).toBe(0);
    expect(await undone()).toBe(1);
    await startWorker();
    await settled();
    expect(mail.messages()).toHaveLength(1);
  });

  test('sends nothing twice when the sweep offers everything again while it is at work', async () => {
    await startWorker();
    for (let count = 0; count < 3; count += 1) {
      await becomesReady();
      await Promise.all([bench.sweep.run(), bench.relay.run(), bench.sweep.run()]);
      await settled();
      await losesNeed();
      await bench.sweep.run();
      await settled();
    }
    expect(mail.messages()).toHaveLength(6);
    const ids = mail.messages().map((message) => message.header('message-id'));
    expect(new Set(ids).size).toBe(6);
  });

  test('tries again when the mail server refuses for now, under the same message id', async () => {
    mail.refuseNext(2);
    await startWorker();
    await becomesReady();
    await settled();
    expect(mail.messages()).toHaveLength(1);
    const [delivery] = await bench.database.delivery.findMany({ where: { companyId: house.company.id } });
    expect(delivery).toMatchObject({ state: 'sent', attempts: 3, error: null });
    expect(mail.messages()[0]?.header('message-id')).toBe(`<${delivery?.id}@flagway.example.test>`);
  });

  test('shows the failure of an outbox row whose topic has no handler, and goes on with the others', async () => {
    await bench.change(house.company, (change) => change.later('moonrise', {}));
    await becomesReady();
    await startWorker();
    await mail.waitFor(({ subject }) => subject.startsWith('Ready for hookup'));
    await until('the failure is on the row', async () => {
      const row = await bench.database.outbox.findFirst({
        where: { topic: 'moonrise', companyId: house.company.id },
      });
      return (row?.attempts ?? 0) > 0 && row?.doneAt === null;
    });
    const row = await bench.database.outbox.findFirstOrThrow({
      where: { topic: 'moonrise', companyId: house.company.id },
    });
    expect(row.error).toContain('No handler for notices of the kind "moonrise"');
    await bench.database.outbox.delete({ where: { id: row.id } });
  });
});
