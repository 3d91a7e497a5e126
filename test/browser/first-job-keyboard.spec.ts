import { beforeAll, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { demoStage } from './support/demo-stage.js';
import { JOB_VALUES, SITE_VALUES } from './support/first-job-values.js';
import { DESK } from './support/pages.js';
import { peopleDatabase } from './support/people-database.js';

/* The office of an empty company without a mouse: from the empty board to committed dates by the keyboard alone. */

const PATIENCE = 240_000;

describe('the first job with the keyboard alone', () => {
  const stage = demoStage(peopleDatabase);
  let page: Page;

  beforeAll(async () => {
    page = await stage.pageOf('office', DESK);
    await page.getByRole('heading', { name: 'No job is on the board yet' }).waitFor();
  }, PATIENCE);

  /** What the focus is on, as it is called: its label, or what stands on it. */
  const called = () =>
    page.evaluate(() => {
      const element = document.activeElement;
      const [label] = (element as HTMLInputElement | null)?.labels ?? [];
      return (label?.textContent ?? element?.textContent ?? '').trim();
    });
  /** Presses the tab key until the focus is on what is called so; a page on which it is never reached fails. */
  const tabTo = async (name: string) => {
    for (let presses = 0; presses < 80; presses += 1) {
      await page.keyboard.press('Tab');
      if ((await called()) === name) return;
    }
    throw new Error(`80 presses did not lead to "${name}"; the focus is on "${await called()}"`);
  };
  const type = async (values: Readonly<Record<string, string>>) => {
    for (const [label, value] of Object.entries(values)) {
      await tabTo(label);
      await page.keyboard.type(value);
    }
  };
  const enter = async (button: string) => {
    await tabTo(button);
    await page.keyboard.press('Enter');
  };
  const comesTo = (step: string) =>
    page.waitForFunction((id) => document.activeElement?.id === id, `step-${step}`);

  it(
    'sets up crews, equipment, authority and site, each note leading to the next',
    async () => {
      await enter('Enter a job');
      await page.getByRole('heading', { name: 'Crews' }).waitFor();
      await enter('Enter all that are missing');
      await comesTo('equipment');
      await enter('Enter the equipment');
      await comesTo('authority');
      await type({ 'Name of the authority': 'Alder Bend building department' });
      await enter('Enter the authority');
      await comesTo('site');
      await type(SITE_VALUES);
      await enter('Enter the site');
      await comesTo('job');
    },
    PATIENCE,
  );

  it(
    'enters the job, sees its dates, and commits them',
    async () => {
      const { 'Name of the job': name = '', 'Owner of the house': owner = '', ...measures } = JOB_VALUES;
      await type({ 'Name of the job': name, 'Owner of the house': owner });
      await tabTo('Walk');
      await page.keyboard.press('Space');
      await type(measures);
      await enter('Enter the job and plan it');
      await page.waitForURL(/\/jobs\/\d+$/, { timeout: 120_000 });
      await page.getByRole('heading', { name: 'Planned, not committed' }).waitFor();
      await enter('Commit the planned dates');
      await page.getByRole('heading', { name: 'Planned, not committed' }).waitFor({ state: 'detached' });
      expect(await page.getByText('Done: Commit the planned dates').count()).toBe(1);
    },
    PATIENCE,
  );
});
