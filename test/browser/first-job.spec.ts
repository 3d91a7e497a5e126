import { beforeAll, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { findings } from './support/accessibility.js';
import { demoStage } from './support/demo-stage.js';
import { JOB_VALUES, SITE_VALUES } from './support/first-job-values.js';
import { DESK, keepScreen, openPage, PHONE, settled } from './support/pages.js';
import { peopleDatabase } from './support/people-database.js';

/*
 * The office of a company in which nothing is entered, from an empty board to a job with committed dates. Each test goes on
 * where the one before stopped. Source of the rules that the engine checks: Web Content Accessibility Guidelines (WCAG)
 * 2.2, levels A and AA, as axe-core tests them.
 */

const PATIENCE = 240_000;

interface JobOfTest {
  readonly number: number;
  readonly phases: readonly {
    readonly state: string;
    readonly commitment: { readonly state: string } | null;
  }[];
}

describe.each([
  ['desk', DESK],
  ['phone', PHONE],
] as const)('the first job, %s', (screen, size) => {
  const stage = demoStage(peopleDatabase);
  let page: Page;

  beforeAll(async () => {
    page = await stage.pageOf('office', size);
  }, PATIENCE);

  const clean = async (name: string) => {
    await keepScreen(page, `first-${name}-${screen}`, true);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    expect(await findings(page)).toEqual([]);
  };
  const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
  const focused = () => page.evaluate(() => document.activeElement?.id ?? '');
  const form = (name: string) => page.getByRole('form', { name, exact: true });
  const fill = async (name: string, values: Readonly<Record<string, string>>) => {
    for (const [label, value] of Object.entries(values))
      await form(name).getByLabel(label, { exact: true }).fill(value);
  };
  const jobs = async (): Promise<readonly JobOfTest[]> => {
    const office = await stage.service.client('office');
    const { jobs: list } = await office.data<{ jobs: { edges: { node: JobOfTest }[] } }>(
      '{ jobs { edges { node { number phases { state commitment { state } } } } } }',
    );
    return list.edges.map(({ node }) => node);
  };

  it(
    'begins at an empty board and an empty site sheet that say what will stand there',
    async () => {
      await page.getByRole('heading', { name: 'No job is on the board yet' }).waitFor();
      await clean('board');
      await openPage(page, `${stage.service.url}/?as=table`);
      expect(await page.getByRole('heading', { name: 'No job is on the board yet' }).count()).toBe(1);
      await openPage(page, `${stage.service.url}/site`);
      await page.getByText('so there is nothing to start').waitFor();
      await clean('site-sheet');
      await openPage(page, `${stage.service.url}/`);
      await page.getByRole('link', { name: 'Enter a job', exact: true }).click();
      await page.getByRole('heading', { name: 'Enter a job', exact: true }).waitFor();
      await settled(page);
    },
    PATIENCE,
  );

  it(
    'asks for crews, and enters the usual ones by one press',
    async () => {
      await clean('nothing');
      expect(await page.getByText('labour, mason, cable, electrician, office').count()).toBe(1);
      await press('Enter all that are missing');
      await page.waitForFunction(() => document.activeElement?.id === 'step-equipment');
      expect(await page.getByText('Masons (mason; 3)').count()).toBe(1);
    },
    PATIENCE,
  );

  it(
    'refuses a crew of a name that is taken at its field, and keeps what was typed',
    async () => {
      await page.getByText('Enter another crew').click();
      const crew = form('A crew of your own');
      await crew.getByLabel('Name of the crew').fill('Masons');
      await crew.getByLabel(/^mason:/).check();
      await press('Enter this crew');
      const fault = page.getByText('There is a crew "Masons" already; choose another name.');
      await fault.waitFor();
      expect(await crew.getByLabel('Name of the crew').inputValue()).toBe('Masons');
      expect(await crew.getByLabel('Name of the crew').getAttribute('aria-invalid')).toBe('true');
      await crew.getByLabel('Name of the crew').fill('Masons Stone');
      expect(await fault.count()).toBe(0);
      await press('Enter this crew');
      await page.getByText('Masons Stone (mason; 2)').waitFor();
    },
    PATIENCE,
  );

  it(
    'asks for equipment and the authority, with what is wrong at the field',
    async () => {
      await press('Enter the equipment');
      await page.waitForFunction(() => document.activeElement?.id === 'step-authority');
      await press('Enter the authority');
      await page.getByText('Enter the name of the authority.').waitFor();
      expect(await page.evaluate(() => document.activeElement?.getAttribute('name'))).toBe('authorityName');
      await clean('authority-refused');
      await fill('An authority', { 'Name of the authority': 'Alder Bend building department' });
      await press('Enter the authority');
      await page.waitForFunction(() => document.activeElement?.id === 'step-site');
    },
    PATIENCE,
  );

  it(
    'asks for the site; what the service refuses stands at the field as well',
    async () => {
      await fill('A site', { ...SITE_VALUES, 'Frost depth': '420' });
      await press('Enter the site');
      await page.getByText('Frost depth must be at most 120 inches; give inches, not feet.').waitFor();
      await fill('A site', { 'Frost depth': '42' });
      await press('Enter the site');
      await page.waitForFunction(() => document.activeElement?.id === 'step-job');
      expect(await focused()).toBe('step-job');
    },
    PATIENCE,
  );

  it(
    'keeps what is entered and what is typed when the page is left and come back to',
    async () => {
      await form('The job').getByLabel('Walk', { exact: true }).uncheck();
      await fill('The job', { ...JOB_VALUES, 'Riser height': '70' });
      await openPage(page, `${stage.service.url}/`);
      await openPage(page, `${stage.service.url}/jobs/new`);
      expect(await page.getByText('All that a job needs is there.').count()).toBe(1);
      const job = form('The job');
      for (const [label, value] of Object.entries({ ...JOB_VALUES, 'Riser height': '70' }))
        expect(await job.getByLabel(label, { exact: true }).inputValue()).toBe(value);
      expect(await job.getByLabel('Bottom of the footing below grade').inputValue()).toBe('42');
      await press('Enter the job and plan it');
      await page.getByText('Riser height must be 4 to 7¾ in, got 70; did you mean 7?').waitFor();
      await clean('job-refused');
      // What only the service judges, a rule with its source, stands at its field too.
      await fill('The job', { 'Riser height': '7', 'Bottom of the footing below grade': '40' });
      await press('Enter the job and plan it');
      await page.getByText(/Measured 40 in, limit .*local code and the authority decide/).waitFor();
      const bottom = form('The job').getByLabel('Bottom of the footing below grade');
      expect(await bottom.getAttribute('aria-invalid')).toBe('true');
      await bottom.fill('42');
      await clean('job-typed');
    },
    PATIENCE,
  );

  it(
    'plans the job, shows the dates, and commits them when they are seen',
    async () => {
      await press('Enter the job and plan it');
      await page.waitForURL(/\/jobs\/\d+$/, { timeout: 120_000 });
      await page.getByRole('heading', { name: 'Planned, not committed' }).waitFor();
      await settled(page);
      await clean('job-planned');
      const [entered] = await jobs();
      expect(page.url()).toBe(`${stage.service.url}/jobs/${entered?.number}`);
      expect(entered?.phases.some(({ commitment }) => commitment)).toBe(false);
      await press('Commit the planned dates');
      await page.getByRole('heading', { name: 'Planned, not committed' }).waitFor({ state: 'detached' });
      const [committed] = await jobs();
      expect(committed?.phases.length).toBeGreaterThan(10);
      expect(
        committed?.phases.every(
          ({ state, commitment }) => state !== 'waiting' || commitment?.state === 'held',
        ),
      ).toBe(true);
      await clean('job-committed');
    },
    PATIENCE,
  );

  it(
    'stands on the board, from where the next one is entered',
    async () => {
      await openPage(page, `${stage.service.url}/`);
      await page.getByRole('grid').waitFor();
      await page.getByRole('link', { name: 'enter a job', exact: true }).click();
      await page.getByText('All that a job needs is there.').waitFor();
      expect(await form('The job').getByLabel('Riser height').inputValue()).toBe('');
      expect(await form('The job').getByLabel('Tread depth').inputValue()).toBe('12');
    },
    PATIENCE,
  );

  it(
    'is for the office to enter: others are told what to do instead',
    async () => {
      const foreman = await stage.pageOf('foreman', size, '/jobs/new');
      await foreman.getByText('Jobs are entered by the office.').waitFor();
      expect(await foreman.getByRole('form').count()).toBe(0);
      expect(await findings(foreman)).toEqual([]);
      await foreman.context().close();
    },
    PATIENCE,
  );
});
