import { beforeAll, describe, expect, it } from '@jest/globals';
import type { Page, Request } from 'playwright-core';
import { findings } from './support/accessibility.js';
import { PRESENT } from './support/demo-database.js';
import { demoStage } from './support/demo-stage.js';
import { DESK, keepScreen, openPage, PHONE } from './support/pages.js';

/*
 * The weather over the jobs of the board. Source of the rules that the engine checks: Web Content Accessibility
 * Guidelines (WCAG) 2.2, levels A and AA, as axe-core tests them; that nothing hangs on colour alone is its 1.4.1.
 */

const PATIENCE = 300_000;
const HOUR = 3_600_000;
const JOB = 104;
/** A day of the demo's forecast in the zone of its sites, in which it is five hours behind UTC. */
const DAY = { words: 'Fri 17 Jan', start: '2031-01-17T05:00:00Z', end: '2031-01-18T05:00:00Z' } as const;

interface Site {
  readonly forecast: { readonly source: string; readonly hours: readonly Hour[] };
  readonly weatherWindows: readonly {
    readonly limitKey: string;
    readonly name: string;
    readonly closed: readonly {
      readonly from: string;
      readonly to: string;
      readonly causes: readonly { readonly text: string; readonly source: string }[];
    }[];
  }[];
}

interface Hour {
  readonly at: string;
  readonly temperatureF: number;
  readonly windMph: number;
  readonly rainInches: number;
}

describe('the weather over the jobs', () => {
  const stage = demoStage();
  let board: Page;
  let site: Site & { readonly id: string };
  let kinds: ReadonlySet<string>;
  const asked: Request[] = [];

  beforeAll(async () => {
    const office = await stage.service.client('office');
    const { jobByNumber } = await office.data<{
      jobByNumber: {
        site: Site & { id: string };
        phases: { state: string; weatherLimitKey: string | null }[];
      };
    }>(
      `{ jobByNumber(number: ${JOB}) { phases { state weatherLimitKey }
        site { id forecast { source hours { at temperatureF windMph rainInches } }
          weatherWindows { limitKey name closed { from to causes { text source } } } } } }`,
    );
    site = jobByNumber.site;
    kinds = new Set(
      jobByNumber.phases.flatMap(({ state, weatherLimitKey }) =>
        weatherLimitKey && state !== 'done' && state !== 'dropped' ? [weatherLimitKey] : [],
      ),
    );
    board = await stage.pageOf('office', DESK);
    board.on('request', (request) => {
      if (request.postData()?.includes('BoardWeather')) asked.push(request);
    });
    await openPage(board, `${stage.service.url}/`);
    await board
      .getByRole('gridcell', { name: /weather of/ })
      .first()
      .waitFor();
  });

  const day = (page: Page, words: string) =>
    page.getByRole('gridcell', { name: new RegExp(`^${JOB}, weather of ${words}`) });
  const hoursOf = (from: string, to: string) =>
    site.forecast.hours.filter(
      ({ at }) => Date.parse(at) >= Date.parse(from) && Date.parse(at) < Date.parse(to),
    );
  const closedOn = (from: string, to: string) =>
    site.weatherWindows.filter(
      ({ limitKey, closed }) =>
        kinds.has(limitKey) &&
        closed.some((one) => Date.parse(one.from) < Date.parse(to) && Date.parse(one.to) > Date.parse(from)),
    );

  it('says of each day what a plain look at its hours gives', async () => {
    const hours = hoursOf(DAY.start, DAY.end);
    expect(hours).toHaveLength(24);
    const temperatures = hours.map(({ temperatureF }) => Math.round(temperatureF));
    const said = await day(board, DAY.words).getAttribute('aria-label');
    expect(said).toContain(`${Math.min(...temperatures)} to ${Math.max(...temperatures)} °F`);
    expect(said).toContain(`wind to ${Math.max(...hours.map(({ windMph }) => Math.round(windMph)))} mph`);
    expect(said).toContain('no rain');
    const closed = closedOn(DAY.start, DAY.end).map(({ name }) => name);
    expect(closed.length).toBeGreaterThan(0);
    expect(said?.split('Closed for a time: ')[1]?.split(', ').sort()).toEqual(closed.sort());
  });

  it('is told apart by hatches and lines, not by colour', async () => {
    const row = board.getByRole('row', { name: /Chapel Hill/ });
    const fills = await row
      .locator('.weather-closed')
      .evaluateAll((shades) => shades.map((shade) => shade.getAttribute('fill')));
    expect(fills.length).toBeGreaterThan(0);
    for (const fill of fills) expect(fill).toMatch(/^url\(#weather-(some|all)\)$/);
    expect(await row.locator('.weather-rain').first().getAttribute('fill')).toBe('url(#weather-rain)');
    expect(await row.locator('.weather-temperature').getAttribute('d')).toMatch(/^M.*L/);
    const wet = site.forecast.hours.filter(({ rainInches }) => rainInches >= 0.01);
    expect(await row.locator('.weather-rain').count()).toBe(wet.length);
  });

  it('ends where the forecast does and is called unknown from there on', async () => {
    const beyond = board.getByRole('gridcell', {
      name: new RegExp(`^${JOB}, weather of .* and on: unknown`),
    });
    expect(await beyond.count()).toBe(1);
    const last = site.forecast.hours.at(-1)?.at ?? '';
    const end = new Date(Date.parse(last) + HOUR).toISOString();
    await beyond.focus();
    const detail = board.locator('#detail');
    await detail.getByText('unknown, which is not fair').waitFor();
    // 15:00 UTC is ten in the morning there.
    expect(end).toBe('2031-01-22T15:00:00.000Z');
    expect(await detail.innerText()).toContain('It reaches to Wed 22 Jan 10:00');
  });

  it('is reached from the bars by keys alone, and its detail names limit, value, hour and source', async () => {
    await board.getByRole('gridcell', { name: /^Job 104, Bed and stone: Walk/ }).focus();
    await board.keyboard.press('ArrowUp');
    const reached = await board.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
    expect(reached).toMatch(/^104, weather of/);
    await board.keyboard.press('Home');
    for (let days = 0; days < 2; days += 1) await board.keyboard.press('ArrowRight');
    const there = await board.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '');
    expect(there).toContain(`weather of ${DAY.words}`);
    const detail = board.locator('#detail-weather');
    await detail.waitFor();
    const said = (await detail.innerText()).replaceAll(/\s+/g, ' ');
    for (const { name, closed } of closedOn(DAY.start, DAY.end)) {
      expect(said).toContain(`Closed for ${name}, `);
      const stretch = closed.find((one) => Date.parse(one.to) > Date.parse(DAY.start));
      for (const { text, source } of stretch?.causes ?? []) {
        expect(said).toContain(text);
        expect(said).toContain(source);
      }
    }
    expect(said).toMatch(/at worst (\w{3} \d+ \w{3} )?\d\d:\d\d \(/);
    expect(said).toMatch(/published|from memory|common practice/);
    expect(said).toContain('Limits defer to the local code');
    await keepScreen(board, 'weather-day-desk');
    await board.keyboard.press('Enter');
    expect(await board.evaluate(() => document.activeElement?.id)).toBe('detail');
    await board.keyboard.press('Escape');
    expect(await board.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(there);
  });

  it('has the source and the age of the forecast', async () => {
    expect(await board.locator('#detail').innerText()).toContain(`new, from: ${site.forecast.source}`);
    expect(await board.getByRole('rowheader', { name: /Chapel Hill.*Forecast of/ }).innerText()).toContain(
      'forecast new',
    );
  });

  it('shows a band with its name for each kind of work to come when that is asked for', async () => {
    await board.getByRole('button', { name: 'weather limits' }).click();
    const row = board.getByRole('row', { name: /Chapel Hill/ });
    const names = await row.locator('.weather-kind').allTextContents();
    expect(new Set(names)).toEqual(
      new Set(site.weatherWindows.filter(({ limitKey }) => kinds.has(limitKey)).map(({ name }) => name)),
    );
    await keepScreen(board, 'weather-limits-desk');
    expect(await findings(board)).toEqual([]);
    await board.getByRole('button', { name: 'weather limits' }).click();
  });

  it('is asked for by named jobs and days only', async () => {
    const variables = asked.map(
      (request) =>
        (
          JSON.parse(request.postData() ?? '{}') as {
            variables: { jobIds: string[]; from: string; to: string };
          }
        ).variables,
    );
    expect(variables.length).toBeGreaterThan(0);
    for (const { jobIds, from, to } of variables) {
      expect(jobIds.length).toBeGreaterThan(0);
      expect(jobIds.length).toBeLessThanOrEqual(12);
      expect(Date.parse(to) - Date.parse(from)).toBeLessThanOrEqual(56 * 24 * HOUR + HOUR);
    }
  });

  it(
    'follows a new forecast on the open board, which is not asked for again by anybody',
    async () => {
      const office = await stage.service.client('office');
      const later = new Date(Date.parse(PRESENT) + HOUR / 2).toISOString();
      stage.service.setClock(later);
      const rows = Array.from({ length: 96 }, (_, hour) =>
        [new Date(Date.parse(PRESENT) + hour * HOUR).toISOString(), 71, 3, 0, 0].join(','),
      );
      const text = [`issued_at,${later}`, 'at,temperature_f,wind_mph,rain_chance_pct,rain_in', ...rows].join(
        '\n',
      );
      const taken = await office.change('uploadForecast', {
        siteId: site.id,
        source: 'a warm spell',
        format: 'csv',
        text,
      });
      expect(taken).toEqual({ __typename: 'ForecastReceived' });
      await board
        .getByRole('gridcell', { name: `${JOB}, weather of ${DAY.words}: 71 °F, wind to 3 mph` })
        .waitFor();
    },
    PATIENCE,
  );

  it.each([
    ['desk', DESK],
    ['phone', PHONE],
  ] as const)(
    'has no fault that the accessibility engine finds, %s',
    async (name, screen) => {
      const page = await stage.pageOf('office', screen, '/');
      await day(page, DAY.words).waitFor();
      await day(page, DAY.words).focus();
      await page.locator('#detail-weather').waitFor();
      await keepScreen(page, `weather-${name}`, true);
      expect(await findings(page)).toEqual([]);
      await page.context().close();
    },
    PATIENCE,
  );
});
