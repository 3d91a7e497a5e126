import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { Sweep } from '../../src/worker/sweep.js';
import { Worker } from '../../src/worker/worker.js';
import { type AnsweringServer, type Reply, startAnswering } from '../support/answering-server.js';
import { startService, type TestService } from '../support/service.js';
import { until } from '../support/until.js';
import { hourlyAnswer, steady } from '../support/weather-answers.js';
import { makeWorld, type PlanningWorld } from './planning-world.js';

/* The whole way: a site's forecast falls due, goes through the queue, is fetched by a worker and planned with. */

const NOW = '2031-01-06T14:00:00Z';
const AT_ONCE = 2;

describe('forecasts in the queue', () => {
  let service: TestService;
  let server: AnsweringServer;
  let stop: () => Promise<void>;
  const worlds: PlanningWorld[] = [];

  beforeAll(async () => {
    server = await startAnswering();
    service = await startService({
      environment: {
        FLAGWAY_FORECAST_HOURLY_URL: `${server.url}/v1/forecast`,
        FLAGWAY_FORECASTS_AT_ONCE: String(AT_ONCE),
        FLAGWAY_FETCH_TRY_MILLISECONDS: '20000',
        FLAGWAY_FETCH_PAUSE_MILLISECONDS: '1',
        FLAGWAY_RELAY_MILLISECONDS: '50',
      },
    });
    for (let i = 0; i < 4; i += 1) {
      const world = await makeWorld(service);
      await world.chain('Larch', { stone: { weatherLimitKey: 'stone' } });
      worlds.push(world);
    }
    stop = await service.app.get(Worker).start();
  });
  afterAll(async () => {
    await stop();
    await service.stop();
    await server.stop();
  });

  /** Sites are told apart by their latitude. */
  const choose = (index: number, latitude: number) =>
    worlds[index]!.office.change('chooseForecastSource', {
      siteId: worlds[index]!.siteId,
      source: 'openHourly',
      latitude,
      longitude: 8,
    });
  const latitudeOf = (path: string): string => new URL(path, server.url).searchParams.get('latitude') ?? '';
  const feed = (index: number) =>
    service.database.forecastFeed.findUniqueOrThrow({ where: { siteId: worlds[index]!.siteId } });
  const good: Reply = hourlyAnswer('2031-01-06T00:00:00Z', steady(96, 15));

  it('are fetched for all sites, though one fails, and no more at once than is set', async () => {
    let now = 0;
    let most = 0;
    let release = (): void => undefined;
    const released = new Promise<void>((resolve) => (release = resolve));
    server.answer = async ({ path }) => {
      now += 1;
      most = Math.max(most, now);
      await released;
      now -= 1;
      return latitudeOf(path) === '40' ? { status: 500 } : good;
    };
    await Promise.all([40, 41, 42, 43].map((latitude, i) => choose(i, latitude)));
    await until('two are being fetched', () => now === AT_ONCE);
    await until('all are queued', async () => {
      const rows = await service.database.forecastFeed.findMany();
      return rows.length === 4 && rows.every(({ queuedAt }) => queuedAt !== null);
    });
    release();
    await until('all were tried', async () => {
      const rows = await service.database.forecastFeed.findMany();
      return rows.every(({ fetchedAt, failedAt }) => fetchedAt !== null || failedAt !== null);
    });
    expect(most).toBe(AT_ONCE);
    expect(await feed(0)).toMatchObject({ failures: 1, fetchedAt: null });
    for (const index of [1, 2, 3])
      expect(await feed(index)).toMatchObject({ failures: 0, fetchedAt: new Date(NOW), queuedAt: null });
    expect(await service.database.forecast.count()).toBe(3);
  });

  it('are put back by the sweep when the queue has lost them', async () => {
    server.answer = () => good;
    const { siteId } = worlds[0]!;
    // As if it had been handed to a queue that was lost since.
    await service.database.forecastFeed.update({
      where: { siteId },
      data: { queuedAt: new Date(NOW), generation: { increment: 1 } },
    });
    await service.app.get(Sweep).run();
    await until('it was fetched', async () => (await feed(0)).fetchedAt !== null);
    expect(await feed(0)).toMatchObject({ failures: 0, failure: null, queuedAt: null });
  });

  it('are left to another worker when this one closes', async () => {
    server.answer = () => ({ fault: 'hang' });
    server.asked.length = 0;
    await choose(1, 50);
    await until('it is being fetched', () => server.asked.length === 1);
    await stop();
    expect(await feed(1)).toMatchObject({ failures: 0, failedAt: null, queuedAt: new Date(NOW) });
  });
});
