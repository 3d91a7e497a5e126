import { beforeAll, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { enterDemoCompany } from '../../prisma/demo/company.js';
import { enterJob } from '../../prisma/demo/enter-job.js';
import { MEASUREMENTS } from '../../prisma/demo/measurements.js';
import { findings } from './support/accessibility.js';
import { demoStage } from './support/demo-stage.js';
import { peopleDatabase } from './support/people-database.js';
import { DESK, keepScreen, PHONE } from './support/pages.js';

/** Laying the cables of a job takes seconds, and the engine reads a long page. */
const PATIENCE = 240_000;

describe('the design of a job', () => {
  const stage = demoStage(peopleDatabase);
  /** A small landing and one step. */
  let number = 0;
  beforeAll(async () => {
    const office = await stage.service.client('office');
    const authorityId = await enterDemoCompany(office);
    const street = 'Quarry Road';
    const measurement = MEASUREMENTS[street];
    if (!measurement) throw new Error(`There is no sheet of ${street}`);
    const job = { street, house: 3, owner: 'R. Alder', priority: 5, dueAt: null, measurement };
    const { jobId } = await enterJob(office, authorityId, job);
    const { data } = await office.ask<{ job: { number: number } }>(
      'query ($id: ID!) { job(id: $id) { number } }',
      {
        id: jobId,
      },
    );
    number = data?.job.number ?? 0;
  });
  const drawn = (page: Page) => page.locator('figure.drawing img').first().waitFor();

  it.each([
    ['desk', DESK],
    ['phone', PHONE],
  ] as const)(
    'is on sheets of its own, with every figure and nothing that the accessibility engine finds, %s',
    async (name, screen) => {
      const page = await stage.pageOf('office', screen, `/jobs/${number}/design`);
      await drawn(page);
      await keepScreen(page, `design-${name}`, true);
      expect(await page.locator('figure.drawing').count()).toBe(2);
      for (const title of [
        'Heat, W/ft²',
        'Circuits',
        'Risers, from the walk up',
        'Footing, before the pour',
        'Design',
      ])
        expect(await page.getByRole('heading', { name: title, exact: true }).count()).toBe(1);
      expect(await page.getByText('98 ft, uncut; runs no closer than 3').count()).toBe(1);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      expect(await findings(page)).toEqual([]);
      await page.context().close();
    },
    PATIENCE,
  );

  it.each([
    ['desk', DESK],
    ['phone', PHONE],
  ] as const)(
    'is on the page of the job, which leads to the sheets, %s',
    async (name, screen) => {
      const page = await stage.pageOf('office', screen, `/jobs/${number}`);
      await drawn(page);
      await keepScreen(page, `job-with-design-${name}`, true);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0);
      await page.getByRole('link', { name: 'sheets to print' }).click();
      await page.getByRole('heading', { level: 1, name: `Design of job ${number}, Quarry Road` }).waitFor();
      await page.context().close();
    },
    PATIENCE,
  );
});
