import { beforeAll, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { enterDemoCompany } from '../../prisma/demo/company.js';
import { enterJob } from '../../prisma/demo/enter-job.js';
import { MEASUREMENTS } from '../../prisma/demo/measurements.js';
import { findings } from './support/accessibility.js';
import { demoStage } from './support/demo-stage.js';
import { peopleDatabase } from './support/people-database.js';
import { DESK, keepScreen, PHONE } from './support/pages.js';
import { dimensionLine, readPdf } from './support/pdf-sheet.js';

/** Laying the cables of a job takes seconds, and the engine reads a long page. */
const PATIENCE = 240_000;

/** Fractions of an inch as a tape shows them, by the eighth. */
const EIGHTHS = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'];

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
  /** Enters a job like that with a set of another heated length, and says its number. */
  const enterWith = async (heatedFeet: number, house: number): Promise<number> => {
    const office = await stage.service.client('office');
    const sheet = structuredClone(MEASUREMENTS['Quarry Road']);
    Object.assign(sheet?.heatingSets[0] ?? {}, {
      heatedFeet,
      watts: heatedFeet * 12,
      ohms: 4800 / heatedFeet,
    });
    const measurement = JSON.stringify(sheet);
    const { data } = await office.ask<{ sites: { edges: { node: { id: string } }[] } }>(
      '{ sites(first: 1) { edges { node { id } } } }',
    );
    const siteId = data?.sites.edges[0]?.node.id;
    const outcome = await office.change<{ job: { number: number } }>(
      'createJob',
      { siteId, name: `Quarry Road ${house}`, ownerName: 'R. Alder', measurement },
      '... on JobChanged { job { number } }',
    );
    return outcome.job.number;
  };
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

  // A CSS inch is 96 px, a point of PDF 1/72 in; Letter is 8.5 by 11 in. Sources: CSS Values and Units, ISO 32000, ANSI Y14.1.
  it(
    'prints on Letter with every drawing at its size on paper, whole on a sheet',
    async () => {
      const page = await stage.pageOf('office', DESK, `/jobs/${number}/design`);
      await drawn(page);
      const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1');
      const boxes = [...pdf.matchAll(/\/MediaBox ?\[([\d. ]+)\]/g)].map(([, box = '']) => box.trim());
      expect(boxes.length).toBeGreaterThanOrEqual(3);
      expect(new Set(boxes)).toEqual(new Set(['0 0 612 792']));
      await page.emulateMedia({ media: 'print' });
      for (const image of await page.locator('figure.drawing img').all()) {
        const source = decodeURIComponent((await image.getAttribute('src')) ?? '');
        const [, width, height] = /width="([\d.]+)in" height="([\d.]+)in"/.exec(source) ?? [];
        const [, , , inner] = (/viewBox="([^"]+)"/.exec(source)?.[1] ?? '').split(' ').map(Number);
        const [, x1, x2] =
          /class="rule"><line class="cut" x1="([-\d.]+)" y1="[-\d.]+" x2="([-\d.]+)"/.exec(source) ?? [];
        const box = (await image.boundingBox())!;
        expect(box.width / 96).toBeCloseTo(Number(width), 1);
        expect(box.height / 96).toBeCloseTo(Number(height), 1);
        expect(box.width / 96).toBeLessThanOrEqual(7.5);
        expect(box.height / 96).toBeLessThanOrEqual(10);
        // The stroke under the drawing is an inch of paper.
        const perInch = box.height / 96 / (inner ?? NaN);
        expect((Number(x2) - Number(x1)) * perInch).toBeCloseTo(1, 2);
      }
      await page.context().close();
    },
    PATIENCE,
  );

  it(
    'prints every dimension of the cable plan at its stated inches on the scale of the sheet',
    async () => {
      const page = await stage.pageOf('office', DESK, `/jobs/${number}/design`);
      await drawn(page);
      const sheets = await readPdf(await page.pdf({ preferCSSPageSize: true }));
      await page.context().close();
      const plan = sheets.find(({ texts }) =>
        texts.some(({ words }) => words === 'sleeve for the cold lead'),
      );
      const scale = /Scale 1 : (\d+)/.exec(plan?.texts.map(({ words }) => words).join(' ') ?? '')?.[1];
      // On Letter a landing of 6 by 4½ ft goes at ½ in to the foot.
      expect(Number(scale)).toBe(24);
      const stated = (plan?.texts ?? []).flatMap(({ words, middle, along }) => {
        const inches = /^(\d+)([⅛¼⅜½⅝¾⅞]?) in$/.exec(words);
        return inches
          ? [{ words, middle, along, inches: Number(inches[1]) + EIGHTHS.indexOf(inches[2] ?? '') / 8 }]
          : [];
      });
      // The landing and the step as they were measured.
      for (const measured of ['72 in', '54 in', '12 in'])
        expect(stated.map(({ words }) => words)).toContain(measured);
      for (const { words, middle, along, inches } of stated) {
        const line = dimensionLine(plan?.strokes ?? [], middle, along);
        if (!line) throw new Error(`No dimension line was found under "${words}"`);
        const onPaper = Math.hypot(line.b.x - line.a.x, line.b.y - line.a.y) / 72;
        // To the eighth that is stated, and a hundredth of an inch of paper for the printer's own rounding.
        const off = Math.abs(onPaper * Number(scale) - inches);
        if (off > 1 / 16 + 0.01 * Number(scale)) throw new Error(`"${words}" is ${off} in off`);
      }
    },
    PATIENCE,
  );

  it.each([
    ['desk', DESK],
    ['phone', PHONE],
  ] as const)(
    'has a rule of the trade waived by reason, and a wrongly read label corrected, %s',
    async (name, screen) => {
      const job = await enterWith(150, name === 'desk' ? 5 : 7);
      const page = await stage.pageOf('office', screen, `/jobs/${job}`);
      const design = page.getByRole('region', { name: 'Design', exact: true });
      const broken = design
        .getByRole('row')
        .filter({ has: page.getByRole('rowheader', { name: 'No', exact: true }) });
      await broken.first().getByText('Go on against this rule').click();
      const correction = page.locator('details.correct-measurement');
      await correction.locator('summary').click();
      await broken.first().scrollIntoViewIfNeeded();
      await keepScreen(page, `waive-a-rule-${name}`);
      await correction.scrollIntoViewIfNeeded();
      await keepScreen(page, `correct-a-measurement-${name}`);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - innerWidth),
      ).toBeLessThanOrEqual(0);
      expect(await findings(page)).toEqual([]);

      await broken.first().getByLabel('Why it is right here; kept with your name').fill('owner wants it so');
      await broken.first().getByRole('button', { name: 'Waive the rule' }).click();
      const waived = design.getByRole('row').filter({ hasText: 'Waived by Ines Rowe' });
      await waived.first().waitFor();
      expect(await waived.first().innerText()).toMatch(/Waived by Ines Rowe, .*\d\d:\d\d: owner wants it so/);
      await waived.first().scrollIntoViewIfNeeded();
      await keepScreen(page, `waived-rule-${name}`);

      const reason = correction.getByLabel('Why it is corrected; kept with your name');
      const correct = correction.getByRole('button', { name: 'Correct the measurement' });
      await reason.fill('label read again');
      await correct.click();
      expect(await correction.getByRole('alert').innerText()).toContain('Nothing is other than it was');
      const label = correction.getByRole('group', { name: 'Set A, 98 ft' });
      await label.getByLabel('Heated length').fill('98');
      await label.getByLabel('Power').fill('1176');
      await label.getByLabel('Resistance on the label').fill('48.98');
      await correct.click();
      await design.getByRole('row').filter({ hasText: 'Waived by' }).waitFor({ state: 'detached' });
      await broken.first().waitFor({ state: 'detached' });
      await page.getByText('98 ft, uncut; runs no closer than 3').waitFor();
      await page.getByText('measurement corrected').first().waitFor();
      await page.context().close();
    },
    PATIENCE,
  );
});
