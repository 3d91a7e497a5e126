import { describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { findings } from './support/accessibility.js';
import { demoStage } from './support/demo-stage.js';
import {
  DESK,
  freshPage,
  keepPart,
  keepScreen,
  openPage,
  PHONE,
  settled,
  signInAs,
} from './support/pages.js';

/*
 * Every page, in every state it can be brought to, at the desk and on the phone, before the accessibility engine.
 * Source: Web Content Accessibility Guidelines (WCAG) 2.2, levels A and AA, as axe-core tests them.
 */

/** Many states a test: the engine reads each page whole. */
const PATIENCE = 300_000;

describe('the accessibility engine finds nothing', () => {
  const stage = demoStage();

  const clean = async (page: Page, screen: string) => {
    await keepScreen(page, screen);
    expect(await findings(page)).toEqual([]);
  };

  it.each([
    ['desk', DESK],
    ['phone', PHONE],
  ] as const)(
    'on the sign-in page, empty and refused, %s',
    async (name, screen) => {
      const page = await freshPage(stage.browser, screen);
      await openPage(page, `${stage.service.url}/`);
      await clean(page, `sign-in-${name}`);
      await page.getByLabel('E-mail').fill('nobody@quillback.example');
      await page.getByLabel('Password').fill('not the password');
      await page.getByRole('button', { name: 'Sign in', exact: true }).click();
      await page.getByText('E-mail or password is wrong').waitFor();
      await clean(page, `sign-in-refused-${name}`);
      await page.context().close();
    },
    PATIENCE,
  );

  it.each([
    ['desk', DESK],
    ['phone', PHONE],
  ] as const)(
    'on the board in all its views, %s',
    async (name, screen) => {
      const page = await stage.pageOf('office', screen);
      for (const [view, query] of [
        ['jobs', ''],
        ['jobs-8-weeks', '?days=56'],
        ['jobs-a-season', '?days=91'],
        ['jobs-a-day', '?days=1'],
        ['jobs-narrowed', '?search=bed&kind=mason&only=conflicts'],
        ['crews', '?rows=crew&days=28'],
        ['table', '?as=table'],
        ['far-away', '?from=2033-05-02'],
      ] as const) {
        await openPage(page, `${stage.service.url}/${query}`);
        await clean(page, `board-${view}-${name}`);
      }
      await openPage(page, `${stage.service.url}/`);
      await page.locator('[role=gridcell][id^=bar-]').nth(4).focus();
      await page.locator('#detail-reasons li').first().waitFor();
      await clean(page, `board-focus-${name}`);
      await page.context().close();
    },
    PATIENCE,
  );

  it.each([
    ['night', { colorScheme: 'dark' }],
    ['forced-colours', { forcedColors: 'active', reducedMotion: 'reduce' }],
  ] as const)(
    'in %s: the board with its signs, a job, a design, the site sheet',
    async (name, media) => {
      const desk = await freshPage(stage.browser, DESK);
      await desk.emulateMedia(media);
      await signInAs(desk, stage.service.url, 'office');
      await desk.getByRole('gridcell').first().waitFor();
      await desk.getByRole('button', { name: 'what the signs mean' }).click();
      await clean(desk, `board-${name}-desk`);
      await keepPart(desk.getByRole('region', { name: 'Signs' }), `signs-${name}`);
      for (const page of ['jobs/101', 'jobs/101/design']) {
        await openPage(desk, `${stage.service.url}/${page}`);
        await clean(desk, `${page.replaceAll('/', '-')}-${name}-desk`);
      }
      await desk.context().close();
      const phone = await freshPage(stage.browser, PHONE);
      await phone.emulateMedia(media);
      await signInAs(phone, stage.service.url, 'foreman');
      await clean(phone, `site-${name}-phone`);
      await phone.context().close();
    },
    PATIENCE,
  );

  it(
    'and the signs stand the same by day',
    async () => {
      const desk = await stage.pageOf('office', DESK);
      await desk.getByRole('gridcell').first().waitFor();
      await desk.getByRole('button', { name: 'what the signs mean' }).click();
      await clean(desk, 'board-signs-desk');
      await keepPart(desk.getByRole('region', { name: 'Signs' }), 'signs-paper');
      await desk.context().close();
    },
    PATIENCE,
  );

  it.each([
    ['desk', DESK],
    ['phone', PHONE],
  ] as const)(
    'on the pages of jobs and hookups, found and missing, %s',
    async (name, screen) => {
      const page = await stage.pageOf('electrician', screen);
      const client = await stage.service.client('electrician');
      const { hookups } = await client.data<{ hookups: { edges: { node: { id: string } }[] } }>(
        '{ hookups(first: 10) { edges { node { id } } } }',
      );
      const addresses = [
        ['job', '/jobs/101'],
        ['job-missing', '/jobs/999'],
        ['hookup-missing', '/hookups/00000000-0000-7000-8000-000000000000'],
        ['unknown', '/jobs/abc'],
        ...hookups.edges.map(({ node }, index) => [`hookup-${index + 1}`, `/hookups/${node.id}`] as const),
      ] as const;
      expect(hookups.edges.length).toBeGreaterThan(0);
      for (const [place, address] of addresses) {
        await openPage(page, `${stage.service.url}${address}`);
        await settled(page);
        await clean(page, `${place}-${name}`);
      }
      await page.context().close();
    },
    PATIENCE,
  );

  it.each([
    ['desk', DESK],
    ['phone', PHONE],
  ] as const)(
    'on the site sheet, closed and with everything open, %s',
    async (name, screen) => {
      const page = await stage.pageOf('foreman', screen);
      await clean(page, `site-${name}`);
      await page.evaluate(() => {
        for (const sheet of document.querySelectorAll('details')) sheet.open = true;
      });
      for (const call of await page.getByRole('button', { name: 'Call a weather hold' }).all())
        await call.click();
      await keepScreen(page, `site-open-${name}`, true);
      expect(await findings(page)).toEqual([]);
      await page.context().close();
    },
    PATIENCE,
  );
});
