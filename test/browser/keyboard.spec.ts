import { beforeAll, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { DEMO_PASSWORD } from '../../prisma/demo/company.js';
import { demoStage } from './support/demo-stage.js';
import { DESK, freshPage, keepScreen, openPage, settled } from './support/pages.js';

/* The office's morning without a mouse, in one go: each step starts where the one before left the focus. */

describe('with the keyboard alone', () => {
  const stage = demoStage();
  let page: Page;

  beforeAll(async () => {
    page = await freshPage(stage.browser, DESK);
  });

  const focused = (attribute: string) =>
    page.evaluate((name) => document.activeElement?.getAttribute(name) ?? '', attribute);
  const focusedText = () => page.evaluate(() => document.activeElement?.textContent ?? '');

  /** Presses a key until the focus is where it is wanted; a page that cannot be left or reached fails. */
  async function pressUntil(key: string, reached: () => Promise<boolean>): Promise<void> {
    for (let presses = 0; presses < 150; presses += 1) {
      await page.keyboard.press(key);
      if (await reached()) return;
    }
    throw new Error(`150 presses of ${key} did not lead there; the focus is on "${await focusedText()}"`);
  }

  it('a person signs in', async () => {
    await openPage(page, `${stage.service.url}/`);
    await pressUntil('Tab', async () => (await focused('name')) === 'email');
    await page.keyboard.type('office@quillback.example');
    await page.keyboard.press('Tab');
    await page.keyboard.type(DEMO_PASSWORD);
    await page.keyboard.press('Enter');
    await page.getByRole('grid').waitFor();
    await settled(page);
  });

  it('reaches a bar by the tab key and another one by the arrows, and sees where the focus is', async () => {
    await pressUntil('Tab', async () => (await focused('role')) === 'gridcell');
    const first = await focused('id');
    await page.keyboard.press('ArrowRight');
    const second = await focused('id');
    expect(second).toMatch(/^bar-/);
    expect(second).not.toBe(first);
    // Down leads over the weather of the next job to its bars.
    await page.keyboard.press('ArrowDown');
    expect(await focused('id')).toMatch(/^day-/);
    expect(await focused('aria-label')).toMatch(/weather of/);
    await page.keyboard.press('ArrowDown');
    expect(await focused('id')).toMatch(/^bar-/);
    expect(await focused('id')).not.toBe(second);
    const ring = await page.evaluate(
      () => getComputedStyle(document.activeElement as Element, '::after').borderTopWidth,
    );
    expect(ring).toBe('3px');
    await keepScreen(page, 'keyboard-bar-desk');
  });

  it('reads why the phase sits where it sits, and comes back to its bar', async () => {
    const bar = await focused('id');
    expect(await focused('aria-describedby')).toBe('detail-reasons');
    await page.locator('#detail-reasons li').first().waitFor();
    await page.keyboard.press('Enter');
    expect(await focused('id')).toBe('detail');
    expect(await focusedText()).toMatch(/Why (not earlier|then)/);
    await page.keyboard.press('Escape');
    expect(await focused('id')).toBe(bar);
  });

  it('turns the rows from jobs to crews', async () => {
    await pressUntil('Shift+Tab', async () => (await focusedText()) === 'by crew');
    await page.keyboard.press('Enter');
    await page.getByRole('rowheader', { name: /Masons Reed/ }).waitFor();
    expect(new URL(page.url()).searchParams.get('rows')).toBe('crew');
  });

  it('accepts the open proposal', async () => {
    const office = await stage.service.client('office');
    const open = () =>
      office.data<{ proposals: { edges: { node: { number: number; state: string } }[] } }>(
        '{ proposals(first: 200, state: accepted) { edges { node { number state } } } }',
      );
    const number = Number(/No\. (\d+)/.exec(await page.locator('.proposal').innerText())?.[1]);
    expect(number).toBeGreaterThan(0);
    await pressUntil('Tab', async () => (await focusedText()) === 'Accept');
    await page.keyboard.press('Enter');
    await page.getByText(`Done: Accept proposal ${number}`).waitFor();
    expect((await open()).proposals.edges.map(({ node }) => node.number)).toContain(number);
    await keepScreen(page, 'proposal-accepted-desk');
  });
});
