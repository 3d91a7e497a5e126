import { describe, expect, it } from '@jest/globals';
import { findings } from './support/accessibility.js';
import { demoStage } from './support/demo-stage.js';
import { DESK, keepScreen, PHONE } from './support/pages.js';

const PATIENCE = 300_000;

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
