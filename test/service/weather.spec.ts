import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Phase } from '../../src/generated/prisma/client.js';
import { TEST_PASSWORD } from '../support/company.js';
import { startService, type TestService } from '../support/service.js';
import { get, makeWorld, type PlanningWorld, short } from './planning-world.js';

/* Monday 6 January 2031, 09:00 in New York (14:00Z); crews work 13:00Z to 21:00Z. */

const HOUR = 3_600_000;
const BEGIN = Date.parse('2031-01-06T13:00:00Z');

/** A forecast file from 13:00Z on: one temperature an hour, no wind, no rain. */
function csv(
  temperatures: readonly number[],
  { issued = '2031-01-06T12:00Z' }: { readonly issued?: string } = {},
) {
  const rows = temperatures.map((temperature, i) => {
    const at = new Date(BEGIN + i * HOUR).toISOString().replace(':00.000Z', 'Z');
    return `${at},${temperature},0,0,0,0`;
  });
  const head = 'at,temperature_f,wind_mph,gust_mph,rain_chance_pct,rain_in';
  return [`issued_at,${issued}`, head, ...rows].join('\n');
}

/** `mild` °F for so many hours, with other temperatures in some of them. */
function hours(count: number, mild: number, others: Record<number, number> = {}): number[] {
  return Array.from({ length: count }, (_, i) => others[i] ?? mild);
}

const range = (from: number, to: number, value: number): Record<number, number> =>
  Object.fromEntries(Array.from({ length: to - from }, (_, i) => [from + i, value]));

describe('the weather', () => {
  let service: TestService;
  let world: PlanningWorld;
  let stone: Phase;

  beforeAll(async () => {
    service = await startService();
  });
  beforeEach(async () => {
    service.setClock('2031-01-06T14:00:00Z');
    world = await makeWorld(service);
    const { phases } = await world.chain('Larch', { stone: { weatherLimitKey: 'stone' } });
    stone = get(phases, 'stone');
    await world.replan();
  });
  afterAll(() => service.stop());

  const upload = (text: string, format = 'csv') =>
    world.foreman.change('uploadForecast', { siteId: world.siteId, source: 'test sheet', text, format });
  const holds = () =>
    world.db.weatherHold.findMany({ where: { companyId: world.companyId }, orderBy: { startsAt: 'asc' } });

  describe('from a forecast', () => {
    it('closes work by the limits of its kind and is unknown, not fair, past its end', async () => {
      expect((await world.planned(stone))?.weatherUnknown).toBe(true);
      // Stone stops under 50 °F [from memory: ANSI A108, 50–100 °F for 72 h]: hours 0 to 3 are too cold.
      await upload(csv(hours(48, 60, range(0, 4, 45))));
      expect(await world.dates(stone)).toBe('06 17:00 – 06 21:00');
      expect(await world.planned(stone)).toMatchObject({ weatherUnknown: false });
      const { phase } = await world.office.data<{ phase: object }>(
        'query($id: ID!) { phase(id: $id) { planned { reason { kind text } } } }',
        { id: stone.id },
      );
      expect(phase).toEqual({
        planned: {
          reason: {
            kind: 'weather',
            text: 'stone waits for the weather until Mon 6 Jan 12:00: Too cold for bed and stone without an enclosure: 45 °F, under 50 °F (forecast for Mon 6 Jan 09:00).',
          },
        },
      });
      await upload(csv(hours(3, 60), { issued: '2031-01-06T13:00Z' }));
      expect(await world.planned(stone)).toMatchObject({ weatherUnknown: true });
    });

    it('is used by the time of issue: an older one is refused, so is one from the future', async () => {
      await upload(csv(hours(24, 60)));
      expect(await upload(csv(hours(24, 60), { issued: '2031-01-06T11:00Z' }))).toMatchObject({
        code: 'InvalidInput',
        message: expect.stringMatching(/issued later, 2031-01-06T12:00:00.000Z, is in use already/),
      });
      expect(await upload(csv(hours(24, 60), { issued: '2031-01-08T12:00Z' }))).toMatchObject({
        message: expect.stringMatching(/lies in the future/),
      });
      expect(await world.db.forecast.count({ where: { companyId: world.companyId } })).toBe(1);
    });

    it('lists every fault of a file with its line, and uses nothing of it', async () => {
      const text = csv([60, 999, 60]).replace('2031-01-06T15:00Z', 'noon');
      const outcome = await world.foreman.change(
        'uploadForecast',
        { siteId: world.siteId, source: 'x', text, format: 'csv' },
        '... on InvalidInput { faults { path message } }',
      );
      expect(outcome).toMatchObject({
        code: 'InvalidInput',
        faults: [
          {
            path: 'text.4',
            message: expect.stringMatching(/temperature_f must be a number from -80 to 135/),
          },
          { path: 'text.5', message: expect.stringMatching(/no instant with an offset/) },
        ],
      });
      expect(await world.db.forecast.count({ where: { companyId: world.companyId } })).toBe(0);
    });

    it('is read as JSON too, and its hours are answered in the units of the house', async () => {
      const rows = [
        { at: '2031-01-06T13:00Z', temperature_c: 0, wind_kmh: 16.09344, rain_mm: 25.4 },
        { at: '2031-01-06T14:00Z', temperature_c: null },
        { at: '2031-01-06T15:00Z', temperature_c: 10 },
      ];
      expect(
        await upload(JSON.stringify({ issued_at: '2031-01-06T12:00Z', hours: rows }), 'json'),
      ).toMatchObject({
        __typename: 'ForecastReceived',
      });
      const { site } = await world.office.data<{ site: { forecast: object } }>(
        `query($id: ID!) { site(id: $id) { forecast { source issuedAt receivedAt
           hours(to: "2031-01-06T15:00:00Z") { at temperatureF windMph rainInches rainChance } } } }`,
        { id: world.siteId },
      );
      const unknown = { temperatureF: null, windMph: null, rainInches: null, rainChance: null };
      // 0 °C is 32 °F, 1 mile is 1.609344 km, 1 inch is 25.4 mm: exact by definition (NIST SP 811).
      expect(site.forecast).toEqual({
        source: 'test sheet',
        issuedAt: '2031-01-06T12:00:00.000Z',
        receivedAt: '2031-01-06T14:00:00.000Z',
        hours: [
          { at: '2031-01-06T13:00:00.000Z', temperatureF: 32, windMph: 10, rainInches: 1, rainChance: null },
          { at: '2031-01-06T14:00:00.000Z', ...unknown },
        ],
      });
    });

    it('does not close what stands under an enclosure', async () => {
      const pool = await world.db.equipmentPool.create({
        data: { companyId: world.companyId, kind: 'enclosure', name: 'Tents', unit: 'piece', quantity: 1 },
      });
      const hold = { fromPhaseId: stone.id, untilPhaseId: stone.id, poolId: pool.id, quantity: 1 };
      await world.db.equipmentHold.create({ data: { companyId: world.companyId, ...hold } });
      await upload(csv(hours(48, 30)));
      expect(await world.dates(stone)).toBe('06 14:00 – 06 18:00');
    });
  });

  describe('holds of the forecast', () => {
    const cold = csv(hours(60, 60, range(1, 4, 45)));

    it('open for planned work that the forecast stops, with limit, value and hour', async () => {
      await upload(cold);
      expect(await holds()).toMatchObject([
        {
          phaseId: stone.id,
          cause: 'forecast',
          startsAt: new Date('2031-01-06T14:00:00Z'),
          endsAt: new Date('2031-01-06T17:00:00Z'),
          liftedAt: null,
          reason: 'Too cold for bed and stone without an enclosure: 45 °F, under 50 °F',
          detail: [
            { limitId: 'stone-cold', value: 45, limit: 50, unit: '°F', hour: '2031-01-06T14:00:00.000Z' },
          ],
        },
      ]);
      expect(await world.dates(stone)).toBe('06 17:00 – 06 21:00');
    });

    it('are not doubled by the same forecast, though the plan has gone around them', async () => {
      await upload(cold);
      const before = await holds();
      await upload(cold);
      await upload(cold);
      expect(await holds()).toEqual(before);
    });

    it('move with a later forecast and are lifted by a fair one', async () => {
      await upload(cold);
      await upload(csv(hours(60, 60, range(1, 6, 41)), { issued: '2031-01-06T13:00Z' }));
      expect(await holds()).toMatchObject([
        {
          endsAt: new Date('2031-01-06T19:00:00Z'),
          liftedAt: null,
          revision: 2,
          reason: expect.stringMatching(/41 °F/),
        },
      ]);
      await upload(csv(hours(60, 60), { issued: '2031-01-06T14:00Z' }));
      expect(await holds()).toMatchObject([
        {
          liftedAt: new Date('2031-01-06T14:00:00Z'),
          liftReason: 'The forecast issued Mon 6 Jan 09:00 no longer breaks the limit.',
        },
      ]);
      expect(await world.dates(stone)).toBe('06 14:00 – 06 18:00');
    });

    it('do not open for work past 72 hours, nor for nights in which nobody works', async () => {
      await world.office.change('pinPhase', { phaseId: stone.id, startAt: '2031-01-10T13:00:00Z' });
      // Hours 8 to 23 are 21:00Z to 13:00Z, outside the open hours; hour 96 is 10 January, 13:00Z.
      await upload(csv(hours(120, 60, { ...range(8, 24, 20), ...range(96, 104, 20) })));
      expect(await holds()).toEqual([]);
    });

    it('stay lifted by a person, who answers for the protection, and the plan follows that person', async () => {
      await upload(cold);
      const [hold] = await holds();
      await world.foreman.change('liftWeatherHold', {
        weatherHoldId: hold?.id,
        reason: 'tent is up and heated',
      });
      expect(await world.dates(stone)).toBe('06 14:00 – 06 18:00');
      await upload(cold);
      expect(await holds()).toHaveLength(1);
      expect(await world.dates(stone)).toBe('06 14:00 – 06 18:00');
    });
  });

  describe('holds called by people', () => {
    const call = (input: Record<string, unknown>) =>
      world.foreman.change<Record<string, never>>(
        'callWeatherHold',
        { siteId: world.siteId, reason: 'sleet on the bed', ...input },
        '... on WeatherHoldChanged { weatherHold { id cause startsAt endsAt site { id } phase { name } calledBy { role } } }',
      );

    it('move the plan at once, and give it back when they are lifted', async () => {
      const done = await call({ endsAt: '2031-01-06T18:00:00Z' });
      expect(done).toMatchObject({
        weatherHold: {
          cause: 'called',
          startsAt: '2031-01-06T14:00:00.000Z',
          endsAt: '2031-01-06T18:00:00.000Z',
          site: { id: world.siteId },
          phase: null,
          calledBy: { role: 'foreman' },
        },
      });
      expect(await world.dates(stone)).toBe('06 18:00 – 07 14:00');
      const { id } = done['weatherHold'] as unknown as { id: string };
      await world.foreman.change('liftWeatherHold', { weatherHoldId: id, reason: 'dry again' });
      expect(await world.dates(stone)).toBe('06 14:00 – 06 18:00');
      expect(
        await world.foreman.change('liftWeatherHold', { weatherHoldId: id, reason: 'dry again' }),
      ).toMatchObject({
        code: 'WrongState',
      });
    });

    it('of a phase leave the rest of the site alone, and cures go on under any hold', async () => {
      const { phases } = await world.chain('Birch', {
        dig: { trade: 'labour' },
        cure: { trade: null, durationKind: 'elapsed', hours: 10 },
      });
      await call({ phaseId: stone.id, endsAt: '2031-01-07T13:00:00Z' });
      expect(await world.dates(stone)).toBe('07 13:00 – 07 17:00');
      expect(await world.dates(get(phases, 'dig'))).toBe('06 14:00 – 06 18:00');
      await call({ startsAt: '2031-01-06T18:00:00Z', endsAt: '2031-01-07T13:00:00Z' });
      expect(await world.dates(get(phases, 'cure'))).toBe('06 18:00 – 07 04:00');
    });

    it('without an end close a day from now, and what follows is unknown', async () => {
      const { phases } = await world.chain('Birch', { dig: { trade: 'labour' } });
      await call({});
      const dig = get(phases, 'dig');
      expect(await world.dates(dig)).toBe('07 14:00 – 07 18:00');
      expect(await world.planned(dig)).toMatchObject({ weatherUnknown: true });
      service.setClock('2031-01-07T14:00:00Z');
      await world.replan();
      expect(await world.dates(dig)).toBe('08 14:00 – 08 18:00');
    });

    it('are refused when they make no sense', async () => {
      const other = await makeWorld(service);
      const foreign = get((await other.chain('Elm', { wall: {} })).phases, 'wall');
      expect(await call({ endsAt: '2031-01-06T13:00:00Z' })).toMatchObject({ code: 'InvalidInput' });
      expect(await call({ startsAt: '2031-01-05T12:00:00Z', endsAt: '2031-01-05T13:00:00Z' })).toMatchObject({
        message: expect.stringMatching(/has passed already/),
      });
      expect(await call({ reason: ' ' })).toMatchObject({ message: expect.stringMatching(/say why/) });
      expect(await call({ phaseId: foreign.id })).toMatchObject({ code: 'NotFound' });
      expect(await call({ siteId: other.siteId })).toMatchObject({ code: 'NotFound' });
      await world.db.phase.update({ where: { id: stone.id }, data: { state: 'dropped' } });
      expect(await call({ phaseId: stone.id })).toMatchObject({ code: 'WrongState' });
      expect(await holds()).toEqual([]);
    });

    it('are listed by site, those that stand first asked for', async () => {
      const done = await call({ endsAt: '2031-01-06T18:00:00Z' });
      const { id } = done['weatherHold'] as unknown as { id: string };
      await call({ startsAt: '2031-01-08T14:00:00Z', reason: 'snow to come' });
      await world.foreman.change('liftWeatherHold', { weatherHoldId: id, reason: 'dry again' });
      const { site, weatherHold } = await world.office.data<Record<string, object>>(
        `query($site: ID!, $hold: ID!) { site(id: $site) { standing: weatherHolds { reason } all: weatherHolds(activeOnly: false) { reason } }
           weatherHold(id: $hold) { liftReason } }`,
        { site: world.siteId, hold: id },
      );
      expect(site).toEqual({
        standing: [{ reason: 'snow to come' }],
        all: [{ reason: 'sleet on the bed' }, { reason: 'snow to come' }],
      });
      expect(weatherHold).toEqual({ liftReason: 'dry again' });
    });
  });

  describe('limits', () => {
    const ASK = '{ weatherLimitSets { key name revision body limits { id label value unit mark source } } }';
    interface SetAnswer {
      readonly key: string;
      readonly revision: number;
      readonly body: string;
      readonly limits: readonly object[];
    }
    const setOf = async (key: string): Promise<SetAnswer> => {
      const { weatherLimitSets } = await world.office.data<{ weatherLimitSets: SetAnswer[] }>(ASK);
      const set = weatherLimitSets.find((one) => one.key === key);
      if (!set) throw new Error(`No limits for ${key}`);
      return set;
    };
    const save = (limits: unknown, more: Record<string, unknown> = {}) =>
      world.office.change('saveWeatherLimits', { key: 'stone', limits: JSON.stringify(limits), ...more });

    it('start with the defaults of the house, each with its mark and source', async () => {
      const set = await setOf('sealant');
      expect(set.revision).toBe(0);
      // UFGS 07 92 00: joint sealant is applied from 40 to 90 °F.
      expect(set.limits.slice(0, 2)).toEqual([
        {
          id: 'sealant-cold',
          label: 'Too cold for sealant: stops under 40 °F, lifted by enclosure',
          value: 40,
          unit: '°F',
          mark: 'P',
          source: 'UFGS 07 92 00',
        },
        {
          id: 'sealant-hot',
          label: 'Too hot for sealant: stops over 90 °F',
          value: 90,
          unit: '°F',
          mark: 'P',
          source: 'UFGS 07 92 00',
        },
      ]);
    });

    it('are the company’s own once it has saved them, and the plan uses them', async () => {
      await upload(csv(hours(48, 45)));
      expect(await world.dates(stone)).not.toBe('06 14:00 – 06 18:00');
      const limits = JSON.parse((await setOf('stone')).body) as { id: string; value: number }[];
      const eased = limits.map((limit) => (limit.id === 'stone-cold' ? { ...limit, value: 40 } : limit));
      expect(await save(eased)).toMatchObject({ __typename: 'WeatherLimitsSaved' });
      expect((await setOf('stone')).revision).toBe(1);
      expect(await world.dates(stone)).toBe('06 14:00 – 06 18:00');
      const other = await makeWorld(service);
      const { weatherLimitSets } = await other.office.data<{ weatherLimitSets: SetAnswer[] }>(ASK);
      expect(weatherLimitSets.find(({ key }) => key === 'stone')?.revision).toBe(0);
    });

    it('are refused with every fault when they cannot be used', async () => {
      const good = JSON.parse((await setOf('stone')).body) as object[];
      const outcome = await world.office.change(
        'saveWeatherLimits',
        {
          key: 'stone',
          limits: JSON.stringify([
            { ...good[0], value: 500 },
            { ...good[1], measure: 'moon', stop: 'near' },
          ]),
        },
        '... on InvalidInput { faults { path message } }',
      );
      expect(outcome).toMatchObject({
        code: 'InvalidInput',
        faults: expect.arrayContaining([
          { path: 'limits[0].value', message: 'must be -60 to 130 °F, got 500' },
          { path: 'limits[1].measure', message: expect.stringMatching(/must be one of temperature/) },
          { path: 'limits[1].stop', message: 'must be one of below, above, got "near"' },
        ]),
      });
      expect(await save([good[0], good[0]])).toMatchObject({
        message: expect.stringMatching(/two of them have the id/),
      });
      const broken = { key: 'stone', limits: '[{' };
      expect(await world.office.change('saveWeatherLimits', broken)).toMatchObject({
        message: expect.stringMatching(/is not JSON/),
      });
      expect(await save(good, { revision: 7 })).toMatchObject({ code: 'StaleRevision' });
      await expect(world.foreman.change('saveWeatherLimits', broken)).rejects.toThrow(
        /needs the role office/,
      );
    });
  });

  describe('by file over plain HTTP', () => {
    const post = (body: string, headers: Record<string, string> = {}, siteId = world.siteId) =>
      fetch(`${service.url}/files/forecast/${siteId}?source=airfield`, {
        method: 'POST',
        headers: { 'content-type': 'text/csv', cookie: world.foreman.cookie ?? '', ...headers },
        body,
      });

    it('takes CSV and JSON by content type', async () => {
      const answer = await post(csv(hours(48, 60, range(0, 4, 45))));
      expect([answer.status, await answer.json()]).toEqual([
        200,
        { siteId: world.siteId, hours: 48, notes: [] },
      ]);
      expect(await world.dates(stone)).toBe('06 17:00 – 06 21:00');
      const rows = [{ at: '2031-01-06T13:00Z', temperature_f: null }];
      const json = JSON.stringify({ issued_at: '2031-01-06T13:00Z', hours: rows });
      const second = await post(json, { 'content-type': 'application/json' });
      expect(await second.json()).toMatchObject({
        hours: 1,
        notes: [{ line: 1, message: expect.any(String) }],
      });
      const row = await world.db.forecast.findFirst({ where: { companyId: world.companyId } });
      expect(row?.source).toBe('airfield');
    });

    it('answers a faulty file with every fault and its line', async () => {
      const answer = await post(csv([60, 999, -999]));
      expect(answer.status).toBe(422);
      expect(await answer.json()).toMatchObject({
        code: 'InvalidInput',
        faults: [
          { line: 4, message: expect.stringMatching(/temperature_f/) },
          { line: 5, message: expect.stringMatching(/temperature_f/) },
        ],
      });
    });

    it('has one effect for one key', async () => {
      const key = { 'idempotency-key': randomUUID() };
      const text = csv(hours(24, 60));
      const answers = await Promise.all([post(text, key), post(text, key), post(text, key)]);
      expect(new Set(await Promise.all(answers.map((answer) => answer.text()))).size).toBe(1);
      expect(await world.db.forecast.count({ where: { companyId: world.companyId } })).toBe(1);
      expect((await post(csv(hours(24, 61)), key)).status).toBe(409);
      expect((await post(text, { 'idempotency-key': 'often' })).status).toBe(400);
    });

    it('is closed to strangers, other roles and other companies', async () => {
      const text = csv(hours(24, 60));
      expect((await post(text, { cookie: '' })).status).toBe(401);
      const viewer = await world.db.person.findFirstOrThrow({
        where: { companyId: world.companyId, role: 'viewer' },
      });
      const client = await service.signIn(viewer.email, TEST_PASSWORD);
      expect((await post(text, { cookie: client.cookie ?? '' })).status).toBe(403);
      const other = await makeWorld(service);
      const foreign = await post(text, {}, other.siteId);
      const missing = await post(text, {}, '00000000-0000-4000-8000-000000000000');
      expect([foreign.status, missing.status, (await post(text, {}, 'x')).status]).toEqual([404, 404, 404]);
      expect(await foreign.json()).toEqual(await missing.json());
      const both = { in: [world.companyId, other.companyId] };
      expect(await world.db.forecast.count({ where: { companyId: both } })).toBe(0);
    });

    it('refuses what is too large or of another kind, and says so', async () => {
      const large = await post('x'.repeat(2 * 1024 * 1024 + 1));
      expect([large.status, await large.json()]).toEqual([
        413,
        { code: 'bad-request', message: 'The file is larger than 2 MB; leave out hours that are far away.' },
      ]);
      const pdf = await post('%PDF', { 'content-type': 'application/pdf' });
      expect([pdf.status, await pdf.json()]).toEqual([
        415,
        { code: 'bad-request', message: 'Send the file as text/csv or application/json.' },
      ]);
    });
  });

  it('is planned in hours of the crew around a clock change', async () => {
    // New York changes to summer time on Sunday 9 March 2031, 07:00Z: 08:00 there is 13:00Z before and 12:00Z after.
    service.setClock('2031-03-07T13:00:00Z');
    await world.db.phase.update({ where: { id: stone.id }, data: { durationMinutes: 16 * 60 } });
    await world.replan();
    const row = await world.planned(stone);
    expect([short(row!.startAt), short(row!.finishAt)]).toEqual(['07 13:00', '10 20:00']);
  });
});
