import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Phase } from '../../src/generated/prisma/client.js';
import { Change } from '../../src/platform/change/change.js';
import { ChangeRunner } from '../../src/platform/change/change-runner.js';
import { holdsStep } from '../../src/weather/holds/holds.step.js';
import { startService, type TestService } from '../support/service.js';
import { statementsOf } from '../support/statements.js';
import { get, makeWorld, type PlanningWorld } from './planning-world.js';

/* Monday 6 January 2031, 09:00 in New York (14:00Z); crews work 13:00Z to 21:00Z. Stone stops under 50 °F. */

const HOUR = 3_600_000;
const NOW = Date.parse('2031-01-06T14:00:00Z');

const hours = (count: number, mild: number, others: Record<number, number | null> = {}) =>
  Array.from({ length: count }, (_, i) => (i in others ? (others[i] ?? null) : mild));
const range = (from: number, to: number, value: number) =>
  Object.fromEntries(Array.from({ length: to - from }, (_, i) => [from + i, value]));

describe('holds of the forecast by themselves', () => {
  let service: TestService;
  let world: PlanningWorld;
  let stone: Phase;

  beforeAll(async () => {
    service = await startService();
  });
  beforeEach(async () => {
    clock(0);
    world = await makeWorld(service);
    ({ stone } = (await world.chain('Larch', { stone: { weatherLimitKey: 'stone' } })).phases as {
      stone: Phase;
    });
    await world.replan();
  });
  afterAll(() => service.stop());

  /** Moves the clock to some hours after 14:00Z. */
  const clock = (hour: number) => service.setClock(new Date(NOW + hour * HOUR).toISOString());
  const iso = (hour: number) => new Date(NOW + hour * HOUR).toISOString();

  /** Posts a forecast in °F an hour, from some hours after 14:00Z on and issued half an hour before. */
  const post = async (temperatures: readonly (number | null)[], first = 0) => {
    const rows = temperatures.map((t, i) => `${iso(first + i)},${t ?? ''},0,0,0,0`);
    const head = 'at,temperature_f,wind_mph,gust_mph,rain_chance_pct,rain_in';
    const text = [`issued_at,${iso(first - 0.5)}`, head, ...rows].join('\n');
    const input = { siteId: world.siteId, source: 'x', text, format: 'csv' };
    expect(await world.foreman.change('uploadForecast', input)).toMatchObject({
      __typename: 'ForecastReceived',
    });
  };
  const holds = () =>
    world.db.weatherHold.findMany({ where: { companyId: world.companyId }, orderBy: { startsAt: 'asc' } });
  /** Holds as hours after 14:00Z, those that are lifted left out. */
  const held = async () =>
    (await holds())
      .filter(({ liftedAt }) => liftedAt === null)
      .map(({ startsAt, endsAt }) => [startsAt, endsAt].map((at) => (Number(at) - NOW) / HOUR));
  const passTime = () => service.app.get(ChangeRunner).passTime(world.ctx);
  const tellings = () =>
    world.db.outbox.findMany({
      where: { companyId: world.companyId, topic: { startsWith: 'weather' } },
      orderBy: { id: 'asc' },
    });
  const journal = () =>
    world.db.journalEntry.count({
      where: { companyId: world.companyId, action: { startsWith: 'weather hold' } },
    });
  const saveStone = (value: number) =>
    world.office.change('saveWeatherLimits', {
      key: 'stone',
      limits: JSON.stringify([
        {
          id: 'stone-cold',
          measure: 'temperature',
          stop: 'below',
          value,
          text: 'Too cold for stone',
          source: { mark: 'C', text: 'common practice, no source' },
        },
      ]),
    });

  it('open and lift when the limits change, and say so', async () => {
    await post(hours(60, 60, range(1, 3, 52)));
    expect(await holds()).toEqual([]);
    await saveStone(55);
    expect(await held()).toEqual([[1, 3]]);
    expect(await holds()).toMatchObject([
      { openedFor: 'The limits were changed.', openedAt: new Date(NOW), tellings: 1 },
    ]);
    expect(await world.dates(stone)).toBe('06 14:00 – 06 20:00');
    await saveStone(50);
    expect(await holds()).toMatchObject([
      { liftedAt: new Date(NOW), liftReason: 'The limits were changed and are no longer broken.' },
    ]);
    expect(await world.dates(stone)).toBe('06 14:00 – 06 18:00');
  });

  it('lift when protection stands over the work, and come back when it is gone', async () => {
    await post(hours(60, 60, range(0, 3, 45)));
    expect(await held()).toEqual([[0, 3]]);
    const pool = await world.db.equipmentPool.create({
      data: { companyId: world.companyId, kind: 'enclosure', name: 'Tents', unit: 'piece', quantity: 1 },
    });
    const taken = await world.db.equipmentHold.create({
      data: {
        companyId: world.companyId,
        fromPhaseId: stone.id,
        untilPhaseId: stone.id,
        poolId: pool.id,
        quantity: 1,
      },
    });
    await world.replan();
    expect(await holds()).toMatchObject([
      { liftReason: 'The work is under protection now (enclosure), which lifts the limit.' },
    ]);
    expect(await world.dates(stone)).toBe('06 14:00 – 06 18:00');
    await world.db.equipmentHold.delete({ where: { id: taken.id } });
    await world.replan();
    expect(await held()).toEqual([[0, 3]]);
    expect((await holds()).at(-1)).toMatchObject({
      openedFor: 'The plan of the work, or its protection, was changed.',
    });
  });

  it('open when work comes within 72 hours by the passing of time alone', async () => {
    await world.office.change('pinPhase', { phaseId: stone.id, startAt: '2031-01-10T13:00:00Z' });
    await post(hours(200, 60, range(95, 103, 20)));
    expect(await held()).toEqual([]);
    clock(22);
    await passTime();
    expect(await held()).toEqual([]);
    clock(24);
    await passTime();
    expect(await held()).toEqual([[95, 103]]);
    expect(await holds()).toMatchObject([{ openedFor: 'The work has come within 72 hours.' }]);
  });

  it('open for a promise that the plan has left because of the weather, once it comes near', async () => {
    const promised = { startAt: new Date(NOW + 95 * HOUR), finishAt: new Date(NOW + 99 * HOUR) };
    await world.db.phase.update({ where: { id: stone.id }, data: { durationMinutes: 240 } });
    await world.db.commitment.create({
      data: {
        companyId: world.companyId,
        phaseId: stone.id,
        crewId: world.masons,
        madeAt: new Date(NOW),
        ...promised,
      },
    });
    await post(hours(200, 60, range(95, 103, 20)));
    expect(await held()).toEqual([]);
    expect(Number((await world.planned(stone))?.startAt)).not.toBe(Number(promised.startAt));
    clock(24);
    await passTime();
    expect(await held()).toEqual([[95, 103]]);
    expect(await tellings()).toMatchObject([{ topic: 'weather-hold' }]);
  });

  it('are over when their hours have passed, and leave nothing to do', async () => {
    await post(hours(60, 60, range(0, 3, 45)));
    clock(4);
    const before = await holds();
    await passTime();
    expect(await holds()).toEqual(before);
    const { site } = await world.office.data<{ site: { weatherHolds: object[] } }>(
      'query($id: ID!) { site(id: $id) { weatherHolds { id } } }',
      { id: world.siteId },
    );
    expect(site.weatherHolds).toEqual([]);
  });

  it('are lifted when their work is done', async () => {
    await post(hours(60, 60, range(0, 3, 45)));
    await world.db.phase.update({ where: { id: stone.id }, data: { state: 'dropped' } });
    await world.replan();
    expect(await holds()).toMatchObject([
      { liftReason: 'The work is done or dropped; there is nothing left to hold.' },
    ]);
  });

  it('stay over what a newer forecast does not say', async () => {
    await post(hours(60, 60, range(1, 6, 45)));
    expect(await held()).toEqual([[1, 6]]);
    await world.db.forecast.updateMany({ data: { issuedAt: new Date(NOW - 9 * HOUR) } });
    // Rain within four hours after counts for stone: of hour 4 and later a forecast of eight hours cannot tell.
    await post(hours(8, 60, { 3: null }));
    expect(await held()).toEqual([[3, 6]]);
  });

  it('remember through a new forecast that a limit has closed and not opened again', async () => {
    const [limit] = JSON.parse(
      (
        await world.office.data<{ weatherLimitSets: { key: string; body: string }[] }>(
          '{ weatherLimitSets { key body } }',
        )
      ).weatherLimitSets.find(({ key }) => key === 'stone')?.body ?? '[]',
    ) as object[];
    const limits = JSON.stringify([{ ...limit, reopen: { value: 55, hours: 2 } }]);
    await world.office.change('saveWeatherLimits', { key: 'stone', limits });
    // Under 50 °F in hour 0; two fair hours, 3 and 4, open hour 5.
    await post([45, 52, 52, 56, 56, 52, ...hours(40, 60)]);
    expect(await held()).toEqual([[0, 5]]);
    clock(2);
    await post([52, 56, 56, 52, ...hours(40, 60)], 2);
    expect(await held()).toEqual([[0, 5]]);
    clock(3);
    await post([54, 54, 54, 56, 56, ...hours(40, 60)], 3);
    expect(await held()).toEqual([[0, 8]]);
  });

  describe('tell people', () => {
    it('once when they open, and not again for a forecast that means the same', async () => {
      await post(hours(60, 60, range(1, 4, 45)));
      const before = await holds();
      expect(await tellings()).toMatchObject([
        { topic: 'weather-hold-soon', payload: { holds: [{ id: before[0]?.id, telling: 1 }] } },
      ]);
      const lines = await journal();
      clock(0.5);
      for (const issued of [0.1, 0.2, 0.3]) {
        await world.db.forecast.updateMany({ data: { issuedAt: new Date(NOW - issued * HOUR - HOUR) } });
        await post(hours(60, 60, range(1, 4, 45)));
      }
      expect(await holds()).toEqual(before);
      expect(await tellings()).toHaveLength(1);
      expect(await journal()).toBe(lines);
    });

    it('not of other values of the same hours, nor of an hour more or less', async () => {
      await post(hours(60, 60, range(1, 4, 45)));
      await world.db.forecast.updateMany({ data: { issuedAt: new Date(NOW - 9 * HOUR) } });
      await post(hours(60, 60, range(1, 4, 44)));
      expect(await holds()).toMatchObject([{ revision: 1, reason: expect.stringMatching(/44 °F/) }]);
      await world.db.forecast.updateMany({ data: { issuedAt: new Date(NOW - 9 * HOUR) } });
      await post(hours(60, 60, range(1, 5, 44)));
      expect(await holds()).toMatchObject([{ revision: 2, tellings: 1 }]);
      expect(await tellings()).toHaveLength(1);
    });

    it('again when hours are added that matter, or another limit', async () => {
      await post(hours(60, 60, range(1, 4, 45)));
      await world.db.forecast.updateMany({ data: { issuedAt: new Date(NOW - 9 * HOUR) } });
      await post(hours(60, 60, range(1, 6, 45)));
      expect(await holds()).toMatchObject([{ tellings: 2 }]);
      expect((await tellings()).at(-1)).toMatchObject({ payload: { holds: [{ telling: 2 }] } });
      await world.db.forecast.updateMany({ data: { issuedAt: new Date(NOW - 9 * HOUR) } });
      await post(hours(60, 60, range(1, 6, 101)));
      expect(await holds()).toMatchObject([
        { tellings: 3, detail: [{ limitId: 'hot' }, { limitId: 'hot-wind' }].slice(0, 1) },
      ]);
    });

    it('when they are lifted before their end', async () => {
      await post(hours(60, 60, range(1, 4, 45)));
      const [hold] = await holds();
      await world.db.forecast.updateMany({ data: { issuedAt: new Date(NOW - 9 * HOUR) } });
      await post(hours(60, 60));
      expect((await tellings()).map(({ topic, payload }) => [topic, payload])).toEqual([
        ['weather-hold-soon', expect.anything()],
        ['weather-hold-lifted', { holdIds: [hold?.id], by: expect.any(String) }],
      ]);
    });

    it('by day only, when the work is further away than twelve hours', async () => {
      await world.office.change('pinPhase', { phaseId: stone.id, startAt: '2031-01-08T13:00:00Z' });
      await post(hours(90, 60, range(47, 50, 45)));
      expect(await held()).toEqual([[47, 50]]);
      expect(await tellings()).toMatchObject([{ topic: 'weather-hold' }]);
    });
  });

  describe('cost', () => {
    /** Statements of the step alone. */
    const ofStep = (seconds = 0) =>
      statementsOf(() =>
        world.db.$transaction(async (tx) => {
          await holdsStep(new Change(world.ctx, tx, new Date(NOW + seconds * 1000)));
        }),
      );

    it('a handful of statements while nothing has changed, and no forecast is read', async () => {
      await post(hours(60, 60, range(1, 4, 45)));
      await ofStep();
      const quiet = await ofStep(60);
      expect(quiet.length).toBeLessThanOrEqual(12);
      expect(quiet.filter((text) => /"hours"|update/i.test(text))).toEqual([]);
      const later = await ofStep(3600);
      expect(later.some((text) => text.includes('"hours"'))).toBe(true);
    });

    it('no more of them for more phases', async () => {
      await post(hours(60, 60));
      await ofStep();
      const few = (await ofStep(60)).length;
      for (const name of ['Ash', 'Elm', 'Oak'])
        await world.chain(name, { a: { weatherLimitKey: 'stone' }, b: { weatherLimitKey: 'sealant' } });
      await ofStep();
      expect((await ofStep(60)).length).toBe(few);
    });

    it('next to nothing for a company without a forecast', async () => {
      expect((await ofStep()).length).toBeLessThanOrEqual(2);
    });
  });

  it('leave another company alone', async () => {
    const other = await makeWorld(service);
    const block = get((await other.chain('Elm', { block: { weatherLimitKey: 'stone' } })).phases, 'block');
    await other.replan();
    await post(hours(60, 60, range(0, 3, 45)));
    expect(await other.db.weatherHold.count({ where: { phaseId: block.id } })).toBe(0);
  });
});
