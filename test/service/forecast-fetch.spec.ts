import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Phase } from '../../src/generated/prisma/client.js';
import { Relay } from '../../src/worker/relay.js';
import { ForecastFetcher } from '../../src/weather/weather.face.js';
import { type AnsweringServer, type Reply, startAnswering } from '../support/answering-server.js';
import { startService, type TestService } from '../support/service.js';
import {
  GRID_PATH,
  gridAnswer,
  type GridOptions,
  hourlyAnswer,
  PLACE,
  POINT_PATH,
  pointAnswer,
  problemAnswer,
  steady,
} from '../support/weather-answers.js';
import { get, makeWorld, type PlanningWorld } from './planning-world.js';

/* Monday 6 January 2031, 09:00 in New York (14:00Z); crews work 13:00Z to 21:00Z. */

const NOW = '2031-01-06T14:00:00Z';
const MINUTE = 60_000;

interface FeedAnswer {
  readonly forecastSource: string;
  readonly forecastFeed: {
    readonly fetchedAt: string | null;
    readonly dueAt: string;
    readonly failures: number;
    readonly failedAt: string | null;
    readonly failure: string | null;
  } | null;
  readonly forecast: {
    readonly source: string;
    readonly issuedAt: string;
    readonly ageMinutes: number;
    readonly hours: readonly { readonly at: string; readonly temperatureF: number | null }[];
  } | null;
}

describe('a forecast that is fetched', () => {
  let service: TestService;
  let server: AnsweringServer;
  let world: PlanningWorld;
  let stone: Phase;

  beforeAll(async () => {
    server = await startAnswering();
    service = await startService({
      environment: {
        FLAGWAY_FORECAST_NATIONAL_URL: server.url,
        FLAGWAY_FORECAST_HOURLY_URL: `${server.url}/v1/forecast?apikey=hidden`,
        FLAGWAY_FORECAST_AGENT: 'Flagway test',
        FLAGWAY_FETCH_TRY_MILLISECONDS: '1000',
        FLAGWAY_FETCH_PAUSE_MILLISECONDS: '1',
      },
    });
  });
  beforeEach(async () => {
    service.setClock(NOW);
    server.asked.length = 0;
    server.answer = () => ({ status: 404 });
    world = await makeWorld(service);
    const { phases } = await world.chain('Larch', { stone: { weatherLimitKey: 'stone' } });
    stone = get(phases, 'stone');
    await world.replan();
  });
  afterAll(async () => {
    await service.stop();
    await server.stop();
  });

  const choose = (source: string, more: Record<string, unknown> = PLACE) =>
    world.office.change<Record<string, never>>(
      'chooseForecastSource',
      { siteId: world.siteId, source, ...more },
      '... on InvalidInput { faults { path message } } ... on ForecastSourceChosen { site { forecastSource } }',
    );
  const feedRow = () => world.db.forecastFeed.findUniqueOrThrow({ where: { siteId: world.siteId } });
  /** Fetches what is due of this world's site now, as the consumer of the queue does. */
  const fetchNow = async (): Promise<void> => {
    const { generation } = await feedRow();
    await service.app.get(ForecastFetcher).fetch(world.siteId, generation);
  };
  const look = async (): Promise<FeedAnswer> => {
    const { site } = await world.office.data<{ site: FeedAnswer }>(
      `query($id: ID!) { site(id: $id) { forecastSource forecastFeed { fetchedAt dueAt failures failedAt failure }
         forecast { source issuedAt ageMinutes hours { at temperatureF } } } }`,
      { id: world.siteId },
    );
    return site;
  };
  const journal = () =>
    world.db.journalEntry.count({ where: { companyId: world.companyId, action: 'forecast received' } });
  const entries = () => world.db.journalEntry.count({ where: { companyId: world.companyId } });
  const kept = () => world.db.forecast.count({ where: { companyId: world.companyId } });

  /** The national service with this reply at its gridpoint. */
  const national = (grid: Reply | (() => Reply)): void => {
    server.answer = ({ path }) =>
      path === POINT_PATH
        ? pointAnswer(server.url)
        : path === GRID_PATH
          ? typeof grid === 'function'
            ? grid()
            : grid
          : { status: 404 };
  };
  const grid = (more: Partial<GridOptions> = {}): Reply =>
    gridAnswer({ from: NOW, celsius: steady(72, 15), issued: '2031-01-06T13:30:00Z', ...more });
  /** A site that has a good forecast of the national service already, 59 °F throughout. */
  const settled = async (headers?: Record<string, string>): Promise<void> => {
    national(grid(headers ? { headers } : {}));
    await choose('nationalService');
    await fetchNow();
    server.asked.length = 0;
  };

  describe('from the national weather service', () => {
    it('is looked up by place, read in the units of the house, and used by plan and holds', async () => {
      // 5 °C is 41 °F; stone stops under 50 °F [from memory: ANSI A108, 50–100 °F for 72 h].
      national(grid({ celsius: [5, 5, 5, ...steady(69, 15)] }));
      expect(await choose('nationalService')).toMatchObject({ site: { forecastSource: 'nationalService' } });
      await fetchNow();
      expect(server.asked.map(({ path }) => path)).toEqual([POINT_PATH, GRID_PATH]);
      expect(server.asked[1]?.headers).toMatchObject({
        'user-agent': 'Flagway test',
        accept: 'application/geo+json',
      });
      const { forecast, forecastFeed } = await look();
      expect(forecast).toMatchObject({
        source: 'national weather service',
        issuedAt: '2031-01-06T13:30:00.000Z',
        ageMinutes: 30,
      });
      expect(forecast?.hours.slice(2, 4).map(({ temperatureF }) => temperatureF)).toEqual([41, 59]);
      expect(forecastFeed).toMatchObject({
        fetchedAt: '2031-01-06T14:00:00.000Z',
        failures: 0,
        failure: null,
      });
      expect(await world.dates(stone)).toBe('06 17:00 – 06 21:00');
      expect(await journal()).toBe(1);
    });

    it('is looked up once, and is due again after an hour and up to a tenth of it more', async () => {
      await settled();
      const wait = (await feedRow()).dueAt.getTime() - Date.parse(NOW);
      expect(wait).toBeGreaterThanOrEqual(60 * MINUTE);
      expect(wait).toBeLessThanOrEqual(66 * MINUTE);
      await fetchNow();
      expect(server.asked.map(({ path }) => path)).toEqual([GRID_PATH]);
    });

    it('is looked up anew when its gridpoint is gone', async () => {
      await settled();
      server.answer = ({ path }) =>
        path === POINT_PATH
          ? pointAnswer(server.url, { forecastGridData: `${server.url}/gridpoints/XYZ/32,80` })
          : path === '/gridpoints/XYZ/32,80'
            ? grid({ celsius: steady(72, 20), issued: '2031-01-06T13:40:00Z' })
            : { status: 404 };
      await fetchNow();
      expect((await look()).forecast?.hours[0]?.temperatureF).toBe(68);
    });

    it('is taken from the hourly periods where no series is named', async () => {
      server.answer = ({ path }) =>
        path === POINT_PATH
          ? pointAnswer(server.url, { forecastGridData: null })
          : {
              body: JSON.stringify({
                properties: {
                  updateTime: '2031-01-06T13:30:00+00:00',
                  periods: [
                    { startTime: '2031-01-06T10:00:00-05:00', temperature: 28, temperatureUnit: 'F' },
                  ],
                },
              }),
            };
      await choose('nationalService');
      await fetchNow();
      expect(server.asked[1]?.path).toBe(`${GRID_PATH}/forecast/hourly`);
      expect((await look()).forecast?.hours).toEqual([{ at: '2031-01-06T15:00:00.000Z', temperatureF: 28 }]);
    });

    it('does not exist outside its country, and the failure says what to do', async () => {
      server.answer = () =>
        problemAnswer(404, 'Data Unavailable For Requested Point', 'Unable to provide data');
      await choose('nationalService');
      await fetchNow();
      expect((await look()).forecastFeed?.failure).toMatch(
        /answered 404\. It says: Data Unavailable.* the United States only: check where the site lies, or choose/,
      );
    });

    it('is not fetched from another server, whatever the look-up names', async () => {
      server.answer = () => pointAnswer('http://elsewhere.example.test');
      await choose('nationalService');
      await fetchNow();
      expect((await look()).forecastFeed?.failure).toMatch(
        /names a forecast on another server; it is not fetched/,
      );
    });
  });

  describe('from the open hourly service', () => {
    it('is asked for by place and in known units, and is as old as its first fetch', async () => {
      server.answer = () => hourlyAnswer('2031-01-06T00:00:00Z', steady(96, 15));
      await choose('openHourly', { latitude: 47.123456, longitude: 8.5 });
      await fetchNow();
      const asked = new URL(server.asked[0]?.path ?? '', server.url);
      expect(asked.pathname).toBe('/v1/forecast');
      expect(Object.fromEntries(asked.searchParams)).toMatchObject({
        latitude: '47.1235',
        longitude: '8.5',
        timeformat: 'unixtime',
        timezone: 'GMT',
        apikey: 'hidden',
        hourly: expect.stringMatching(/^temperature_2m,/),
      });
      service.setClock('2031-01-06T15:30:00Z');
      await fetchNow();
      expect((await look()).forecast).toMatchObject({
        source: 'open hourly service',
        issuedAt: '2031-01-06T14:00:00.000Z',
        ageMinutes: 90,
      });
      expect(await kept()).toBe(1);
    });

    it('says in a failure what the service says, and never the key of its address', async () => {
      server.answer = () => ({ status: 400, body: '{"error":true,"reason":"Latitude must be in range"}' });
      await choose('openHourly');
      await fetchNow();
      const { forecastFeed } = await look();
      expect(forecastFeed?.failure).toMatch(/answered 400\. It says: Latitude must be in range/);
      expect(forecastFeed?.failure).not.toMatch(/hidden/);
    });
  });

  describe('that has not changed', () => {
    it('is asked for by its validators, and an answer 304 changes and tells nothing', async () => {
      await settled({ etag: '"a1"', 'last-modified': 'Mon, 06 Jan 2031 13:30:00 GMT' });
      const before = await entries();
      national({ status: 304 });
      service.setClock('2031-01-06T15:00:00Z');
      await fetchNow();
      expect(server.asked[0]?.headers).toMatchObject({
        'if-none-match': '"a1"',
        'if-modified-since': 'Mon, 06 Jan 2031 13:30:00 GMT',
      });
      const { forecast, forecastFeed } = await look();
      expect(forecastFeed).toMatchObject({ fetchedAt: '2031-01-06T15:00:00.000Z', failures: 0 });
      expect(forecast?.ageMinutes).toBe(90);
      expect([await entries(), await kept()]).toEqual([before, 1]);
      await fetchNow();
      expect(server.asked[1]?.headers).toMatchObject({ 'if-none-match': '"a1"' });
    });

    it('in what it says of the hours to come changes nothing but its time of issue', async () => {
      await settled();
      const before = await entries();
      service.setClock('2031-01-06T15:00:00Z');
      national(
        grid({ from: '2031-01-06T15:00:00Z', celsius: steady(71, 15), issued: '2031-01-06T14:45:00Z' }),
      );
      await fetchNow();
      expect([await entries(), await kept()]).toEqual([before, 1]);
      expect((await look()).forecast).toMatchObject({ issuedAt: '2031-01-06T14:45:00.000Z', ageMinutes: 15 });
    });
  });

  describe('with a fault', () => {
    const FAULTS: readonly [string, Reply | (() => Reply), RegExp][] = [
      ['an error of the server', { status: 500 }, /answered 500 \(its own fault\)/],
      ['an answer that hangs', { fault: 'hang' }, /did not answer within 1 s/],
      ['an answer that stops half way', { ...grid(), fault: 'hang-in-body' }, /did not answer within 1 s/],
      ['a line that breaks', { ...grid(), fault: 'break' }, /broke off its answer/],
      ['a text cut short', { body: (grid().body ?? '').slice(0, 400) }, /is no JSON; it may be cut short/],
      ['a page instead of data', { body: '<html>maintenance</html>' }, /is no JSON/],
      ['data of another kind', { body: '{"a":1}' }, /has no properties; it is no gridpoint answer/],
      ['a unit nobody knows', grid({ unit: 'wmoUnit:K' }), /temperature: unit "wmoUnit:K" is not known/],
      ['°F called °C', grid({ celsius: steady(24, 68) }), /is the unit right\?.*; and 21 more faults/],
      ['nulls only', grid({ celsius: [null, null, null] }), /knows no temperature of the hours to come/],
      [
        'hours that are over',
        grid({ from: '2031-01-05T00:00:00Z', celsius: steady(12, 3) }),
        /knows no temp/,
      ],
      [
        'a stale issue',
        grid({ issued: '2031-01-06T11:00:00Z' }),
        /issued 2031-01-06T11.*before the one in use/,
      ],
      ['an issue to come', grid({ issued: '2031-01-07T11:00:00Z' }), /lies in the future/],
      ['circles', { status: 302, headers: { location: GRID_PATH } }, /sends us on more than 3 times/],
      ['too much', { body: 'x'.repeat(4 * 1024 * 1024 + 1) }, /more than 4 MB/],
    ];

    it.each(FAULTS)(
      '(%s) is not used: the one in use stays, with its age, and the next try is told',
      async (_what, reply, message) => {
        await settled();
        const before = await entries();
        const was = (await look()).forecast;
        service.setClock('2031-01-06T15:00:00Z');
        national(reply);
        await fetchNow();
        const { forecast, forecastFeed } = await look();
        expect(forecastFeed).toMatchObject({
          fetchedAt: '2031-01-06T14:00:00.000Z',
          failures: 1,
          failedAt: '2031-01-06T15:00:00.000Z',
          failure: expect.stringMatching(message),
        });
        expect(forecast).toEqual({ ...was, ageMinutes: 90 });
        const wait = Date.parse(forecastFeed?.dueAt ?? '') - Date.parse('2031-01-06T15:00:00Z');
        expect(wait).toBeGreaterThanOrEqual(2.5 * MINUTE);
        expect(wait).toBeLessThanOrEqual(5 * MINUTE);
        expect(await entries()).toBe(before);
      },
    );

    it('of being asked too often is asked again when the server says, not before', async () => {
      await settled();
      national({ status: 429, headers: { 'retry-after': '1800' } });
      await fetchNow();
      expect(server.asked).toHaveLength(1);
      const { dueAt, failure } = (await look()).forecastFeed ?? {};
      expect([dueAt, failure]).toEqual([
        '2031-01-06T14:30:00.000Z',
        expect.stringMatching(/asked too often/),
      ]);
    });

    it('that passes within the tries is none', async () => {
      await settled();
      let tries = 0;
      national(() => ((tries += 1) < 3 ? { status: 503 } : grid({ celsius: steady(72, 20) })));
      await fetchNow();
      const { forecast, forecastFeed } = await look();
      expect([tries, forecastFeed?.failures, forecast?.hours[0]?.temperatureF]).toEqual([3, 0, 68]);
    });

    it('is forgotten with the next good answer', async () => {
      await settled();
      national({ status: 500 });
      await fetchNow();
      await fetchNow();
      expect((await look()).forecastFeed?.failures).toBe(2);
      national(grid({ celsius: steady(72, 20) }));
      await fetchNow();
      expect((await look()).forecastFeed).toMatchObject({ failures: 0, failedAt: null, failure: null });
    });

    it('of a gap alone is used, and the hours of the gap are unknown', async () => {
      national(grid({ celsius: steady(24, 15), without: [5, 6] }));
      await choose('nationalService');
      await fetchNow();
      const { forecast, forecastFeed } = await look();
      expect([forecastFeed?.failures, forecast?.hours.length]).toEqual([0, 22]);
      const line = await world.db.journalEntry.findFirst({
        where: { companyId: world.companyId, action: 'forecast received' },
      });
      expect(line?.detail).toMatchObject({ notes: 1, firstNotes: [expect.stringMatching(/2 hours before/)] });
    });
  });

  describe('by choice of the office', () => {
    it('needs to know where the site lies, and says so', async () => {
      expect(await choose('openHourly', {})).toMatchObject({
        code: 'InvalidInput',
        faults: [
          {
            path: 'latitude',
            message: expect.stringMatching(/is not known of this site; give it in degrees/),
          },
          { path: 'longitude', message: expect.anything() },
        ],
      });
      expect(await choose('openHourly', { latitude: 91, longitude: 0 })).toMatchObject({
        code: 'InvalidInput',
      });
      expect(await look()).toMatchObject({ forecastSource: 'uploaded', forecastFeed: null });
    });

    it('is the office’s alone', async () => {
      const { errors } = await world.foreman.ask(
        'mutation($input: ChooseForecastSourceInput!) { chooseForecastSource(input: $input) { __typename } }',
        {
          input: {
            clientKey: '00000000-0000-4000-8000-000000000001',
            siteId: world.siteId,
            source: 'openHourly',
            ...PLACE,
          },
        },
      );
      expect(errors?.[0]?.message).toMatch(/needs the role office/);
    });

    it('changes nothing when it stands already', async () => {
      await settled();
      const before = [await feedRow(), await entries()];
      await choose('nationalService');
      await choose('nationalService', {});
      expect([await feedRow(), await entries()]).toEqual(before);
    });

    it('of another place sets aside what was forecast for the old one, though it was issued later', async () => {
      await settled({ etag: '"a1"' });
      await world.office.change('updateSite', { siteId: world.siteId, latitude: 44 });
      expect((await look()).forecast?.hours[0]?.temperatureF).toBe(59);
      server.answer = ({ path }) =>
        path.startsWith('/points/44,-73.25')
          ? pointAnswer(server.url)
          : grid({ celsius: steady(72, 0), issued: '2031-01-06T12:00:00Z' });
      await fetchNow();
      expect(server.asked[1]?.headers).not.toHaveProperty('if-none-match');
      expect((await look()).forecast).toMatchObject({ issuedAt: '2031-01-06T12:00:00.000Z' });
      expect((await look()).forecast?.hours[0]?.temperatureF).toBe(32);
      expect(await kept()).toBe(2);
    });

    it('of uploads ends the fetching, and what is still on its way is dropped', async () => {
      await settled();
      const { generation } = await feedRow();
      let chosen: Promise<unknown> | null = null;
      server.answer = async () => {
        await (chosen ??= choose('uploaded', {}));
        return grid({ celsius: steady(72, 20) });
      };
      await service.app.get(ForecastFetcher).fetch(world.siteId, generation);
      const after = await look();
      expect([after.forecastSource, after.forecastFeed]).toEqual(['uploaded', null]);
      await fetchNow();
      expect(await kept()).toBe(1);
    });
  });

  it('does not follow an outdated entry of the queue', async () => {
    await settled();
    await service.app.get(ForecastFetcher).fetch(world.siteId, (await feedRow()).generation - 1);
    await service.app.get(ForecastFetcher).fetch(world.siteId, (await feedRow()).generation + 1);
    expect(server.asked).toEqual([]);
  });

  it('goes to the queue when it is due, once, and only while work of the site is to be done', async () => {
    await settled();
    const relay = service.app.get(Relay);
    const queued = async () => (await feedRow()).queuedAt?.toISOString() ?? null;
    await relay.run();
    expect(await queued()).toBeNull();
    service.setClock('2031-01-06T15:10:00Z');
    await world.db.job.updateMany({ where: { companyId: world.companyId }, data: { state: 'done' } });
    await relay.run();
    expect(await queued()).toBeNull();
    await world.db.job.updateMany({ where: { companyId: world.companyId }, data: { state: 'running' } });
    await relay.run();
    service.setClock('2031-01-06T15:11:00Z');
    await relay.run();
    expect(await queued()).toBe('2031-01-06T15:10:00.000Z');
  });
});
