import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from '@jest/globals';
import { enterDemoCompany } from '../../prisma/demo/company.js';
import { enterJob } from '../../prisma/demo/enter-job.js';
import { MEASUREMENTS } from '../../prisma/demo/measurements.js';
import { readPdf } from '../support/read-pdf.js';
import { demoStage } from './support/demo-stage.js';
import { peopleDatabase } from './support/people-database.js';
import { DESK, keepScreen, PHONE } from './support/pages.js';

/** Laying the cables of a job takes seconds. */
const PATIENCE = 240_000;

describe('the closing record', () => {
  const stage = demoStage(peopleDatabase);
  let number = 0;
  beforeAll(async () => {
    const office = await stage.service.client('office');
    const street = 'Quarry Road';
    const measurement = MEASUREMENTS[street];
    if (!measurement) throw new Error(`There is no sheet of ${street}`);
    const authorityId = await enterDemoCompany(office);
    const job = { street, house: 3, owner: 'R. Alder', priority: 5, dueAt: null, measurement };
    const { jobId } = await enterJob(office, authorityId, job);
    const query = 'query ($id: ID!) { job(id: $id) { number } }';
    number = (await office.data<{ job: { number: number } }>(query, { id: jobId })).job.number;
  });

  it.each([
    ['desk', DESK, 'for the company', 'company'],
    ['phone', PHONE, 'for the owner of the house', 'owner'],
  ] as const)(
    'is downloaded from the page of the job, %s',
    async (name, screen, link, audience) => {
      const page = await stage.pageOf('office', screen, `/jobs/${number}`);
      const section = page.getByRole('region', { name: 'Closing record' });
      await section.scrollIntoViewIfNeeded();
      await keepScreen(page, `closing-record-${name}`);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
      const [download] = await Promise.all([
        page.waitForEvent('download', { timeout: PATIENCE }),
        section.getByRole('link', { name: link }).click(),
      ]);
      expect(download.suggestedFilename()).toBe(`closing-record-${number}-${audience}.pdf`);
      const { pages, title } = await readPdf(readFileSync(await download.path()));
      expect(title).toBe(`Closing record of job ${number} Quarry Road`);
      const words = pages.map(({ text }) => text).join(' ');
      expect(words).toContain('Section through landing and steps, 1 : ');
      expect(words).toContain('98 ft of heating cable');
      await page.context().close();
    },
    PATIENCE,
  );
});
