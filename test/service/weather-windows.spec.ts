import { afterAll, beforeAll, beforeEach, describe, expect, it } from '@jest/globals';
import type { Phase } from '../../src/generated/prisma/client.js';
import { startService, type TestService } from '../support/service.js';
import { get, makeWorld, type PlanningWorld } from './planning-world.js';

/* Monday 6 January 2031, 09:00 in New York (14:00Z). */

const NOW = '2031-01-06T14:00:00Z';
const FIELDS = `limitKey name from to protection issuedAt unknownAfter unknown { from to }
  closed { from to causes { limitId label text value limit unit hour mark source } }
  requirements { requirementId text from to known mark source cause { limitId value limit unit hour } }`;

const at = (hour: number) => `2031-01-06T${String(hour).padStart(2, '0')}:00:00.000Z`;

describe('windows of the weather', () => {
  let service: TestService;
  let world: PlanningWorld;
  let phases: Readonly<Record<string, Phase>>;

  beforeAll(async () => {
    service = await startService();
  });
  beforeEach(async () => {
    service.setClock(NOW);
    world = await makeWorld(service);
    ({ phases } = await world.chain('Larch', {
      block: { weatherLimitKey: 'masonry' },
      wait: { weatherLimitKey: null },
    }));
  });
  afterAll(() => service.stop());

  const upload = (temperatures: readonly (number | null)[]) => {
    const rows = temperatures.map((t, i) => `2031-01-06T${14 + i}:00Z,${t ?? ''},16,20,0,0`);
    const head = 'at,temperature_f,wind_mph,gust_mph,rain_chance_pct,rain_in';
    const text = ['issued_at,2031-01-06T12:00Z', head, ...rows].join('\n');
    return world.foreman.change('uploadForecast', { siteId: world.siteId, source: 'x', text, format: 'csv' });
  };
  const ofSite = async (args: string) => {
    const document = `query($id: ID!) { site(id: $id) { weatherWindows(${args}) { ${FIELDS} } } }`;
    const { site } = await world.office.data<{ site: { weatherWindows: Record<string, unknown>[] } }>(
      document,
      { id: world.siteId },
    );
    return site.weatherWindows;
  };
  const ofPhase = async (phase: Phase) => {
    const document = `query($id: ID!) { phase(id: $id) { weatherWindows { ${FIELDS} } } }`;
    const { phase: found } = await world.office.data<{ phase: { weatherWindows: object | null } }>(document, {
      id: phase.id,
    });
    return found.weatherWindows;
  };

  it('give limit, value, hour, unit and source of what closes the work, what must be done, and what is unknown', async () => {
    await upload([38, 24, 19, null, 45]);
    const [one, ...others] = await ofSite(
      `limitKeys: ["masonry"], from: "${NOW}", to: "2031-01-06T20:00:00Z"`,
    );
    expect(others).toEqual([]);
    // TMS 602-02 as restated in Masonry Magazine, Sept 2004: an enclosure at 20 °F and under.
    expect(one).toMatchObject({
      limitKey: 'masonry',
      name: 'Masonry',
      protection: [],
      issuedAt: '2031-01-06T12:00:00.000Z',
      closed: [
        {
          from: at(16),
          to: at(17),
          causes: [
            {
              limitId: 'masonry-enclosure',
              label: 'Masonry needs an enclosure above 32 °F',
              text: 'Masonry needs an enclosure above 32 °F: 19 °F, under 20 °F',
              value: 19,
              limit: 20,
              unit: '°F',
              hour: at(16),
              mark: 'P',
              source: 'TMS 602-02 as restated in Masonry Magazine, Sept 2004',
            },
          ],
        },
      ],
      unknown: [{ from: at(17), to: at(18) }],
      unknownAfter: at(19),
    });
    const known = (one?.['requirements'] as Record<string, unknown>[]).filter(
      ({ known: isKnown, source }) => isKnown && String(source).startsWith('TMS 602-02'),
    );
    expect(known.map(({ requirementId, from, to }) => [requirementId, from, to])).toEqual([
      ['heat-mortar', at(14), at(17)],
      ['keep-mortar', at(15), at(17)],
      ['heat-masonry', at(15), at(17)],
      ['windbreak', at(15), at(17)],
      ['enclosure', at(16), at(17)],
    ]);
    expect(known[0]).toMatchObject({
      text: 'Heat sand or water: mortar 40–120 °F',
      mark: 'P',
      cause: { limitId: 'heat-mortar', value: 19, limit: 40, unit: '°F', hour: at(16) },
    });
  });

  it('say that all is unknown where there is no forecast', async () => {
    const sets = await ofSite(`from: "${NOW}", to: "2031-01-06T20:00:00Z"`);
    expect(sets.length).toBeGreaterThan(5);
    for (const set of sets)
      expect(set).toMatchObject({ issuedAt: null, closed: [], unknownAfter: '2031-01-06T14:00:00.000Z' });
    const masonry = sets.find(({ limitKey }) => limitKey === 'masonry');
    const asked = masonry?.['requirements'] as { known: boolean; cause: unknown }[];
    expect(asked.length).toBeGreaterThan(4);
    for (const one of asked)
      expect(one).toMatchObject({ known: false, cause: null, from: at(14), to: at(20) });
  });

  it('of a phase are those under the protection it takes, from now for a week', async () => {
    const block = get(phases, 'block');
    await upload([19, 19]);
    expect(await ofPhase(block)).toMatchObject({ closed: [{ from: at(14), to: at(16) }], protection: [] });
    const pool = await world.db.equipmentPool.create({
      data: { companyId: world.companyId, kind: 'enclosure', name: 'Tents', unit: 'piece', quantity: 1 },
    });
    const hold = { fromPhaseId: block.id, untilPhaseId: block.id, poolId: pool.id, quantity: 1 };
    await world.db.equipmentHold.create({ data: { companyId: world.companyId, ...hold } });
    expect(await ofPhase(block)).toMatchObject({
      limitKey: 'masonry',
      closed: [],
      protection: ['enclosure'],
      from: at(14),
      to: '2031-01-13T14:00:00.000Z',
    });
    expect(await ofPhase(get(phases, 'wait'))).toBeNull();
  });

  it('look back on what earlier forecasts said', async () => {
    const rain = (hour: number, wet: number, issued: string) =>
      world.foreman.change('uploadForecast', {
        siteId: world.siteId,
        source: 'x',
        format: 'csv',
        text: `issued_at,${issued}\nat,temperature_f,rain_chance_pct,rain_in\n2031-01-06T${hour}:00Z,60,0,${wet}\n2031-01-06T${hour + 1}:00Z,60,0,0`,
      });
    await rain(13, 0.2, '2031-01-06T12:00Z');
    await rain(15, 0, '2031-01-06T13:00Z');
    const [one] = await ofSite(`limitKeys: ["sealant"], from: "${NOW}", to: "2031-01-06T17:00:00Z"`);
    // Faces are wet for six hours after rain [common practice].
    expect(one).toMatchObject({
      closed: [{ from: at(14), to: at(17), causes: [{ limitId: 'rain-amount', value: 0.2, hour: at(13) }] }],
    });
    const { site } = await world.office.data<{ site: { forecast: { hours: { at: string }[] } } }>(
      'query($id: ID!) { site(id: $id) { forecast { hours { at } } } }',
      { id: world.siteId },
    );
    expect(site.forecast.hours.map((hour) => hour.at)).toEqual([at(15), at(16)]);
  });

  it('are refused for a stretch that is too long or runs backwards', async () => {
    await expect(ofSite('from: "2031-01-06T00:00:00Z", to: "2031-05-06T00:00:00Z"')).rejects.toThrow(
      /more than 92 days apart/,
    );
    await expect(ofSite('from: "2031-01-06T00:00:00Z", to: "2031-01-06T00:00:00Z"')).rejects.toThrow(
      /later end/,
    );
  });

  it('are another company’s business for nobody else', async () => {
    const other = await makeWorld(service);
    const { site } = await other.office.data<{ site: object | null }>(
      'query($id: ID!) { site(id: $id) { weatherWindows { limitKey } } }',
      { id: world.siteId },
    );
    expect(site).toBeNull();
  });

  it('follow requirements that the company saves, and offer limits beside the defaults', async () => {
    const ask = '{ weatherLimitSets { key requirementsBody requirements { id label mark } } }';
    interface Sets {
      readonly weatherLimitSets: { key: string; requirementsBody: string; requirements: object[] }[];
    }
    const stone = async () =>
      (await world.office.data<Sets>(ask)).weatherLimitSets.find(({ key }) => key === 'stone');
    expect((await stone())?.requirements).toEqual([]);
    const { weatherLimitOptions } = await world.office.data<{ weatherLimitOptions: { body: string }[] }>(
      '{ weatherLimitOptions { id body } }',
    );
    expect(weatherLimitOptions).toMatchObject([{ id: 'freeze-thaw' }]);
    const taken = `[${weatherLimitOptions[0]?.body}]`;
    await world.office.change('saveWeatherLimits', { key: 'stone', limits: '[]', requirements: taken });
    expect((await stone())?.requirements).toMatchObject([{ id: 'freeze-thaw', mark: 'P' }]);
    await world.office.change('saveWeatherLimits', { key: 'stone', limits: '[]' });
    expect(JSON.parse((await stone())?.requirementsBody ?? '')).toMatchObject([{ id: 'freeze-thaw' }]);
    expect(
      await world.office.change('saveWeatherLimits', { key: 'stone', limits: '[]', requirements: '[{' }),
    ).toMatchObject({ message: expect.stringMatching(/requirements: is not JSON/) });
  });
});
