import { describe, expect, it } from '@jest/globals';
import type { Locator, Page } from 'playwright-core';
import { findings } from './support/accessibility.js';
import { demoStage } from './support/demo-stage.js';
import { DESK, keepScreen, PHONE } from './support/pages.js';

const PATIENCE = 300_000;

/*
 * The office tries another start for a phase on the board: by keys, by dragging, by a finger, by a form. Source of the rules that the engine of accessibility
 * checks: Web Content Accessibility Guidelines (WCAG) 2.2, levels A and AA; that a drag has another way is its 2.5.7.
 */
describe('a phase is moved on the board', () => {
  const stage = demoStage();

  /** A bar in sight that can be moved and has room to its right. */
  async function movableBar(page: Page): Promise<Locator> {
    await page.locator('.bar-movable').first().waitFor();
    const { width } = page.viewportSize() ?? { width: 0 };
    for (const bar of await page.locator('.bar-movable').all()) {
      const box = await bar.boundingBox();
      if (box && box.x > 220 && box.x + 180 < width && box.y > 150 && box.y < 500)
        return page.locator(`[id="${await bar.getAttribute('id')}"]`);
    }
    throw new Error('No bar in sight can be moved: give the demo work that is still to do.');
  }
  const move = (page: Page) => page.getByRole('region', { name: 'Move', exact: true });
  const held = (bar: Locator) => bar.evaluate((element) => element === document.activeElement);

  it(
    'by keys: picked up, stepped, seen at once, proposed, accepted, undone',
    async () => {
      const page = await stage.pageOf('office', DESK);
      const bar = await movableBar(page);
      await bar.focus();
      await bar.press('m');
      await move(page).getByRole('status').waitFor();
      expect(await move(page).getByRole('status').innerText()).toContain('Nothing moves');
      await bar.press('Shift+ArrowRight');
      await bar.press('ArrowRight');
      await bar.press('PageDown');
      await page.locator('.mark-picked').waitFor();
      expect(await move(page).getByRole('status').innerText()).toMatch(/no earlier than .* It would start /s);
      expect(await bar.getAttribute('class')).toContain('bar-ghost');
      await keepScreen(page, 'move-picked-up-desk');
      expect(await findings(page)).toEqual([]);

      await bar.press('Escape');
      await move(page).waitFor({ state: 'detached' });
      expect(await held(bar)).toBe(true);
      expect(await page.locator('.preview').count()).toBe(0);

      await bar.press('m');
      await bar.press('PageDown');
      await bar.press('Enter');
      await page.getByText(/Done: Propose to move/).waitFor();
      const accept = move(page).getByRole('button', { name: 'Accept the move' });
      await accept.waitFor();
      expect(await held(bar)).toBe(true);
      expect(
        await move(page)
          .getByText(/: trying .* no earlier than/)
          .count(),
      ).toBe(1);
      await keepScreen(page, 'move-proposed-desk');
      expect(await findings(page)).toEqual([]);

      const before = await bar.getAttribute('aria-label');
      await accept.press('Enter');
      const undo = move(page).getByRole('button', { name: 'Undo the move' });
      await undo.waitFor();
      const said = [await bar.getAttribute('id'), before];
      await page.waitForFunction(
        ([id, label]) => document.getElementById(id ?? '')?.getAttribute('aria-label') !== label,
        said,
      );
      await keepScreen(page, 'move-accepted-desk');
      await undo.press('Enter');
      await page.getByText(/Done: Undo proposal/).waitFor();
      await move(page).waitFor({ state: 'detached' });
      await page.waitForFunction(
        ([id, label]) => document.getElementById(id ?? '')?.getAttribute('aria-label') === label,
        said,
      );
      await page.context().close();
    },
    PATIENCE,
  );

  it(
    'by dragging: less than the threshold is a press, Escape gives up, letting go proposes',
    async () => {
      const page = await stage.pageOf('office', DESK);
      const bar = await movableBar(page);
      const box = (await bar.boundingBox()) ?? { x: 0, y: 0 };
      const [x, y] = [box.x + 6, box.y + 22];
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x + 3, y);
      expect(await move(page).count()).toBe(0);
      await page.mouse.move(x + 60, y, { steps: 4 });
      await page.mouse.move(x + 170, y, { steps: 6 });
      await page.locator('.mark-picked').waitFor();
      await keepScreen(page, 'move-dragged-desk');
      await page.keyboard.press('Escape');
      await move(page).waitFor({ state: 'detached' });
      await page.mouse.up();
      expect(await page.getByText(/Propose to move/).count()).toBe(0);

      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x + 170, y, { steps: 8 });
      await page.mouse.up();
      await page.getByText(/Done: Propose to move/).waitFor();
      await move(page).getByRole('button', { name: 'Drop the move' }).press('Enter');
      await page.getByText(/Done: Drop proposal/).waitFor();
      await move(page).waitFor({ state: 'detached' });
      await page.context().close();
    },
    PATIENCE,
  );

  it(
    'by a form in its detail, as firmly as is said, on the phone',
    async () => {
      const page = await stage.pageOf('office', PHONE);
      await page.locator('.bar-movable').first().waitFor();
      await page.locator('.bar-movable').first().focus();
      const detail = page.getByRole('region', { name: 'Detail' });
      await detail.locator('#detail-reasons li').first().waitFor();
      await detail.getByRole('button', { name: 'Try another start' }).press('Enter');
      await detail.getByLabel('Start').fill('2031-01-23T08:00');
      await detail.getByLabel('Meant as').selectOption('fixed');
      await move(page)
        .getByText(/fixed at Thu 23 Jan 08:00/)
        .waitFor();
      await keepScreen(page, 'move-form-phone', true);
      expect(await findings(page)).toEqual([]);
      await move(page).getByRole('button', { name: 'Propose' }).press('Enter');
      await move(page).getByRole('button', { name: 'Accept the move' }).waitFor();
      await keepScreen(page, 'move-proposed-phone', true);
      expect(await findings(page)).toEqual([]);
      await move(page).getByRole('button', { name: 'Drop the move' }).press('Enter');
      await move(page).waitFor({ state: 'detached' });
      await page.context().close();
    },
    PATIENCE,
  );

  it(
    'by a finger that rests on the bar; one that moves at once scrolls',
    async () => {
      const page = await stage.pageOf('office', PHONE);
      await page.locator('.bar-movable').first().waitFor();
      const bar = page.locator('.bar-movable').first();
      await bar.scrollIntoViewIfNeeded();
      const grip = async () => {
        const box = (await bar.boundingBox()) ?? { x: 0, y: 0 };
        return { x: box.x + 10, y: box.y + 22 };
      };
      let { x, y } = await grip();
      const client = await page.context().newCDPSession(page);
      const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', at = x) =>
        client.send('Input.dispatchTouchEvent', {
          type,
          touchPoints: type === 'touchEnd' ? [] : [{ x: at, y }],
        });
      await touch('touchStart');
      await touch('touchMove', x - 30);
      await touch('touchMove', x - 60);
      await touch('touchEnd');
      expect(await move(page).count()).toBe(0);

      await bar.scrollIntoViewIfNeeded();
      ({ x, y } = await grip());
      await touch('touchStart');
      await move(page).waitFor();
      for (const far of [20, 40, 60]) await touch('touchMove', x + far);
      await page.locator('.mark-picked').waitFor();
      await keepScreen(page, 'move-touched-phone');
      await touch('touchEnd');
      await page.getByText(/Done: Propose to move/).waitFor();
      await move(page).getByRole('button', { name: 'Drop the move' }).press('Enter');
      await page.context().close();
    },
    PATIENCE,
  );

  it(
    'in forced colours, and by nobody but the office',
    async () => {
      const page = await stage.pageOf('office', DESK);
      await page.emulateMedia({ forcedColors: 'active', reducedMotion: 'reduce' });
      const bar = await movableBar(page);
      await bar.focus();
      await bar.press('m');
      await bar.press('PageDown');
      await page.locator('.mark-picked').waitFor();
      await keepScreen(page, 'move-forced-colours-desk');
      expect(await findings(page)).toEqual([]);
      await page.context().close();

      const foreman = await stage.pageOf('foreman', DESK);
      await foreman.goto(`${stage.service.url}/`);
      await foreman.getByRole('gridcell').first().waitFor();
      expect(await foreman.locator('.bar-movable').count()).toBe(0);
      await foreman.getByRole('gridcell').first().press('m');
      expect(await move(foreman).count()).toBe(0);
      await foreman.context().close();
    },
    PATIENCE,
  );
});
