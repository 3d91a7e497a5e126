import { describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import type { PlanInput } from '../../shared/schedule/model.js';
import { Planner } from '../../shared/schedule/planner.js';
import { slot } from '../../shared/schedule/slot.js';
import { lostDay } from '../../shared/schedule/what-if/scenarios.js';
import { whatIf } from '../../shared/schedule/what-if/what-if.js';
import type { ApiClient } from '../support/api-client.js';
import { findings } from './support/accessibility.js';
import { demoStage } from './support/demo-stage.js';
import { DESK, keepScreen, openPage, PHONE } from './support/pages.js';

const PATIENCE = 300_000;

/** What is planned, as the page gets it. */
async function plannedBy(office: ApiClient): Promise<PlanInput> {
  const { planInput } = await office.data<{ planInput: { json: string } }>('{ planInput { json } }');
  return JSON.parse(planInput.json) as PlanInput;
}

/** A crew without which jobs end later when it is away so many hours from now on, and how many jobs. */
async function crewMissed(office: ApiClient, hours: number): Promise<{ name: string; later: number }> {
  const { crews } = await office.data<{ crews: { id: string; name: string }[] }>('{ crews { id name } }');
  const planner = Planner.of(await plannedBy(office));
  const { now, crews: planned } = planner.input;
  for (const { id, calendarId } of planned) {
    const away = lostDay(now, slot(now + 4 * hours), calendarId);
    const later = whatIf(planner, away).jobs.filter(({ shift }) => (shift ?? 0) > 0).length;
    if (later > 0) return { name: crews.find((crew) => crew.id === id)?.name ?? id, later };
  }
  throw new Error('No crew is missed: give the demo work that is still to do.');
}

/** Brings a phase that has not begun and takes equipment into sight, and gives its bar. */
async function protectedBar(page: Page, address: string, office: ApiClient): Promise<string> {
  const { phases } = await plannedBy(office);
  const guarded = new Set(
    phases
      .filter(({ holds, facts }) => (holds ?? []).length > 0 && facts?.actualStart === undefined)
      .map(({ id }) => String(id)),
  );
  const { jobs } = await office.data<{
    jobs: {
      edges: {
        node: { name: string; phases: { id: string; planned: { startAt: string } | null }[] };
      }[];
    };
  }>('{ jobs(first: 50) { edges { node { name phases { id planned { startAt } } } } } }');
  for (const { node } of jobs.edges) {
    const found = node.phases.find(({ id, planned }) => planned && guarded.has(id));
    if (!found) continue;
    const view = new URLSearchParams({ search: node.name, from: found.planned?.startAt.slice(0, 10) ?? '' });
    await openPage(page, `${address}/?${view}`);
    return `bar-${found.id}`;
  }
  throw new Error('No planned phase takes equipment: give the demo a protected pour.');
}

/*
 * What the office asks of the plan, with the keyboard alone. Source of the rules that the engine checks: Web Content Accessibility Guidelines
 * (WCAG) 2.2, levels A and AA, as axe-core tests them.
 */
describe('the office asks the plan', () => {
  const stage = demoStage();

  it.each([
    ['desk', DESK],
    ['phone', PHONE],
  ] as const)(
    'what if, how sure, and for a better plan, %s',
    async (name, screen) => {
      const page = await stage.pageOf('office', screen);
      const better = page.getByRole('region', { name: 'Better plan' });
      const tried = page.getByRole('region', { name: 'What if' });
      const sure = page.getByRole('region', { name: 'How sure' });

      await tried.getByLabel('Hours').fill('48');
      await tried.getByRole('button', { name: 'nobody works so long' }).press('Enter');
      await tried.getByText('Nothing is written').waitFor();
      expect(await tried.locator('tbody tr').count()).toBeGreaterThan(3);
      expect(await tried.getByText('later').count()).toBeGreaterThan(0);

      await sure.getByRole('button').press('Enter');
      await sure.getByText('from 200 drawn plans').waitFor({ timeout: 120_000 });
      expect(await sure.locator('svg').count()).toBeGreaterThan(3);
      expect(await sure.getByText('never leave to start').count()).toBe(1);

      await better.getByRole('button', { name: 'Look for a better plan' }).press('Enter');
      await better.getByText('Waits for a worker').waitFor();
      await keepScreen(page, `planning-${name}`, true);
      expect(await findings(page)).toEqual([]);
      // However much the blocks below have to say, the drawing keeps more than half of the screen.
      const { height } = (await page.locator('.chart').boundingBox()) ?? { height: 0 };
      expect(height).toBeGreaterThan(screen.viewport.height / 2);
      await better.getByRole('button', { name: 'Stop and throw away' }).press('Enter');
      await better.getByText('thrown away').waitFor();
      await page.context().close();
    },
    PATIENCE,
  );

  it.each([
    ['desk', DESK],
    ['phone', PHONE],
  ] as const)(
    'what one more crew, a crew that is away and a pour without protection would do, %s',
    async (name, screen) => {
      const page = await stage.pageOf('office', screen);
      const tried = page.getByRole('region', { name: 'What if' });
      const everyJob = tried.locator('tbody tr');
      const office = await stage.service.client('office');
      const { name: crew, later } = await crewMissed(office, 240);
      await tried.getByLabel('Crew').selectOption({ label: crew });

      await tried.getByRole('button', { name: 'one more like it' }).press('Enter');
      await tried.getByText(`If there is one more crew like ${crew}`).waitFor();
      const jobs = await everyJob.count();
      expect(jobs).toBeGreaterThan(3);

      await tried.getByLabel('Hours').fill('240');
      await tried.getByRole('button', { name: 'it is away so long' }).press('Enter');
      await tried.getByText(`If ${crew} is away for 240 h from now`).waitFor();
      expect(await everyJob.count()).toBe(jobs);
      expect(await tried.getByRole('cell', { name: 'later' }).count()).toBe(later);
      await keepScreen(page, `what-if-crew-${name}`, true);
      expect(await findings(page)).toEqual([]);

      const bare = tried.getByRole('button', { name: 'it goes without protection' });
      const guarded = await protectedBar(page, stage.service.url, office);
      expect(await bare.isDisabled()).toBe(true);
      await page.locator(`[id="${guarded}"]`).focus();
      await bare.press('Enter');
      await tried.getByText('never leave to go without').waitFor();
      await tried.getByText('goes without protection:').waitFor();
      expect(await everyJob.count()).toBe(jobs);
      await keepScreen(page, `what-if-bare-${name}`, true);
      expect(await findings(page)).toEqual([]);

      await tried.getByRole('button', { name: 'as it is' }).press('Enter');
      await everyJob.first().waitFor({ state: 'detached' });
      await page.context().close();
    },
    PATIENCE,
  );

  it(
    'nothing of a foreman, who sees the board without these blocks',
    async () => {
      const page = await stage.pageOf('foreman', DESK);
      await page.goto(`${stage.service.url}/`);
      await page.getByRole('region', { name: 'Conflicts' }).waitFor();
      expect(await page.getByRole('region', { name: 'Better plan' }).count()).toBe(0);
      await page.context().close();
    },
    PATIENCE,
  );
});
