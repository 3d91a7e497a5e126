import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { findings } from './support/accessibility.js';
import { demoStage } from './support/demo-stage.js';
import { freshPage, keepScreen, openPage, openPhase, PHONE, settled, signInAs } from './support/pages.js';
import { startedWork, type StartedWork } from './support/started-work.js';

/*
 * A foreman's day in an entry without a signal. The phone opens the sheet from what it keeps, takes the work of the
 * day, loses its page, and meets in the evening what the office has changed meanwhile. Each test goes on where the one
 * before stopped. Source of the rules that the engine checks: WCAG 2.2, levels A and AA, as axe-core tests them.
 */

const PATIENCE = 300_000;

describe('a day without a signal', () => {
  const stage = demoStage();
  let phone: Page;
  let work: StartedWork;

  beforeAll(async () => {
    work = await startedWork(stage.service);
    phone = await freshPage(stage.browser, PHONE, 'allow');
    await signInAs(phone, stage.service.url, 'foreman');
    await phone.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  });
  afterAll(() => phone.context().close());

  const strip = (text: string) => phone.getByRole('button', { name: text });
  const signal = async (there: boolean) => {
    await phone.context().setOffline(!there);
    await phone
      .getByRole('status')
      .getByText(there ? 'Live.' : 'Not connected.')
      .waitFor();
  };
  const clean = async (screen: string) => {
    await keepScreen(phone, screen);
    expect(await findings(phone)).toEqual([]);
    expect(await phone.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
  };

  it('can be put on the home screen, and opens within what a weak signal carries', async () => {
    const manifest = await phone.evaluate(async () => {
      const link = document.querySelector<HTMLLinkElement>('link[rel=manifest]');
      return (await (await fetch(link?.href ?? '')).json()) as {
        start_url: string;
        icons: { src: string }[];
      };
    });
    expect(manifest.start_url).toBe('/site');
    for (const { src } of manifest.icons)
      expect(await phone.evaluate(async (address) => (await fetch(address)).status, src)).toBe(200);
    const loaded = await phone.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('script[src], link[rel=stylesheet]')].map(
        (one) => one.getAttribute('src') ?? one.getAttribute('href') ?? '',
      ),
    );
    const bytes = loaded
      .map((name) => gzipSync(readFileSync(new URL(`../../board/dist${name}`, import.meta.url))).length)
      .reduce((sum, size) => sum + size, 0);
    expect(loaded.length).toBeGreaterThan(1);
    expect(bytes).toBeLessThan(250_000);
  });

  it(
    'opens from what the phone keeps, and says how old that is',
    async () => {
      await signal(false);
      await phone.reload();
      await settled(phone);
      await phone.getByText(/Not connected\. As seen Wed 15 Jan 10:00/).waitFor();
      await phone.getByRole('article', { name: work.title, exact: true }).waitFor();
      await clean('phone-offline-day');
    },
    PATIENCE,
  );

  it(
    'takes checks, a note and a finish, each building on the one before',
    async () => {
      const card = await openPhase(phone, work.title);
      for (const { title, values } of work.checks) {
        const sheet = card.locator('details', { hasText: title });
        await sheet.locator('summary').click();
        for (const { itemId, value, values: many, confirmed } of values) {
          const field = sheet.locator(`[name="${itemId}"]`);
          if (confirmed) await field.check();
          else await field.fill(many ? many.join(' ') : String(value));
        }
        await sheet.getByRole('button', { name: 'Release' }).click();
        await sheet.waitFor({ state: 'detached' });
      }
      await card.getByText('Write a note').click();
      await phone.getByLabel('Note for the next crew').fill('Two blocks cracked, set aside');
      await phone.getByRole('button', { name: 'Keep the note' }).click();
      await phone.getByText('Note: Two blocks cracked, set aside').waitFor();
      await card.getByRole('button', { name: 'Finish' }).click();
      await card.getByText('done, not sent yet').waitFor();
      await strip(`${work.checks.length + 2} unsent`).click();
      await clean('phone-offline-unsent');
      await strip(`${work.checks.length + 2} unsent`).click();
    },
    PATIENCE,
  );

  it(
    'loses nothing when the page is killed',
    async () => {
      const context = phone.context();
      await phone.close();
      phone = await context.newPage();
      await phone.goto(`${stage.service.url}/site`);
      await settled(phone);
      await strip(`${work.checks.length + 2} unsent`).waitFor();
      const row = phone
        .getByRole('region', { name: 'Done' })
        .getByRole('article', { name: work.title, exact: true });
      await row.getByText('done, not sent yet').waitFor();
      await clean('phone-offline-reopened');
    },
    PATIENCE,
  );

  it(
    'comes back to a changed plan: what nobody touched is recorded, the note waits for a choice',
    async () => {
      stage.service.setClock('2031-01-15T21:00:00Z');
      const office = await stage.service.client('office');
      await office.change('notePhase', { phaseId: work.id, note: 'Inspector asks for photos', seen: null });
      await signal(true);
      const choice = phone.locator('.outcome-conflict');
      await choice.waitFor();
      expect(await choice.innerText()).toMatch(
        /On record, by Ines Rowe\s+“Inspector asks for photos”\s+Yours\s+“Two blocks cracked, set aside”/,
      );
      await strip('All sent').waitFor();
      await clean('phone-offline-conflict');
      expect(await phaseNow()).toMatchObject({ state: 'done', note: 'Inspector asks for photos' });
      await choice.getByRole('button', { name: 'Record mine instead' }).click();
      await choice.waitFor({ state: 'detached' });
      await strip('All sent').waitFor();
      expect(await phaseNow()).toMatchObject({ state: 'done', note: 'Two blocks cracked, set aside' });
    },
    PATIENCE,
  );

  it(
    'shows what the service refuses until it is put away, over a reload too',
    async () => {
      await signal(false);
      const refused = await waitingWork();
      const card = await openPhase(phone, refused);
      await card.getByRole('button', { name: 'Start' }).click();
      await strip('1 unsent').waitFor();
      await signal(true);
      await phone.locator('.outcome-refused').getByText(`Start ${refused}`).waitFor();
      await openPage(phone, `${stage.service.url}/site`);
      const kept = phone.locator('.outcome-refused').filter({ hasText: `Start ${refused}` });
      await kept.waitFor();
      await clean('phone-offline-refused');
      await kept.getByRole('button', { name: 'Put away' }).click();
      await kept.waitFor({ state: 'detached' });
    },
    PATIENCE,
  );

  async function phaseNow() {
    const foreman = await stage.service.client('foreman');
    const { phase } = await foreman.data<{ phase: { state: string; note: string | null } }>(
      'query($id: ID!) { phase(id: $id) { state note } }',
      { id: work.id },
    );
    return phase;
  }

  /** The title of a phase of the sheet that something stands in the way of starting. */
  async function waitingWork(): Promise<string> {
    const row = phone
      .getByRole('article')
      .filter({ hasText: 'In the way of starting' })
      .filter({ hasNotText: 'wait,' })
      .first();
    return (await row.getAttribute('aria-label')) ?? '';
  }
});
