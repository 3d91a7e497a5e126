import { afterAll, beforeAll, describe, expect, test } from '@jest/globals';
import { makeCompany } from '../support/company.js';
import { startRedis, type TestRedis } from '../support/redis.js';
import { startService, type TestService } from '../support/service.js';
import { until } from '../support/until.js';

describe('the health pages', () => {
  let redis: TestRedis;
  let service: TestService;

  beforeAll(async () => {
    redis = await startRedis();
    service = await startService({ environment: { REDIS_URL: redis.url } });
  });

  afterAll(async () => {
    await service.stop();
    await redis.stop();
  });

  const ready = async () => {
    const response = await fetch(`${service.url}/health/ready`);
    return { status: response.status, body: (await response.json()) as Record<string, unknown> };
  };

  test('say that the process lives, to anybody', async () => {
    const response = await fetch(`${service.url}/health/live`);
    expect([response.status, await response.json()]).toEqual([200, { live: true }]);
  });

  test('say that database and queue answer', async () => {
    expect(await ready()).toEqual({
      status: 200,
      body: {
        ready: true,
        database: 'answers',
        queue: 'answers',
        queued: 0,
        oldestUnsentSeconds: null,
        givenUp: 0,
      },
    });
  });

  test('tell the age of the oldest due outbox row, and how many were given up', async () => {
    const { company } = await makeCompany(service.database);
    const due = new Date('2031-01-06T13:58:30Z');
    await service.database.outbox.createMany({
      data: [
        {
          companyId: company.id,
          topic: 'hookup-ready',
          payload: {},
          createdAt: due,
          dueAt: due,
          attempts: 12,
        },
        {
          companyId: company.id,
          topic: 'energising-allowed',
          payload: {},
          createdAt: due,
          dueAt: new Date('2031-02-01T12:00:00Z'),
        },
      ],
    });
    expect((await ready()).body).toMatchObject({ ready: true, oldestUnsentSeconds: 90, givenUp: 1 });
    await service.database.outbox.deleteMany({});
  });

  test('say which of the two does not answer, and recover with it', async () => {
    await redis.kill();
    expect(await ready()).toMatchObject({
      status: 503,
      body: { ready: false, database: 'answers', queue: 'does not answer', queued: null },
    });
    await redis.start();
    await until('the queue answers again', async () => (await ready()).status === 200);
  });
});
