import { beforeEach, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { TEST_PASSWORD } from '../support/company.js';
import { electricalJob, type ElectricalJob } from '../support/electrical-job.js';
import { makeOffice } from '../support/office.js';
import { findings } from './support/accessibility.js';
import { linkStage } from './support/link-stage.js';
import { DESK, freshPage, keepScreen, openPage, PHONE, settled } from './support/pages.js';

/*
 * Links for people without an account, from a real mail to the page they open, on a phone, at a desk, and by keys alone.
 * Accessibility: Web Content Accessibility Guidelines (WCAG) 2.2, levels A and AA, as axe-core tests them.
 */

const NOW = '2031-01-06T14:00:00Z';
const PATIENCE = 240_000;

describe('a link', () => {
  const stage = linkStage(NOW);
  let entry: ElectricalJob;

  beforeEach(async () => {
    stage.mail.clear();
    entry = await electricalJob(stage);
  }, PATIENCE);

  /** The address that the electrician was mailed. */
  const mailed = async (): Promise<string> => {
    await entry.makeReady();
    const { email } = entry.job.people.electrician;
    const { text } = await stage.mail.waitFor(({ to }) => to === email);
    const [address] = /http:\/\/\S+\/links\/[\w-]{43}/.exec(text) ?? [];
    if (!address) throw new Error(`The mail carries no link:\n${text}`);
    return address;
  };
  const clean = async (page: Page, name: string) => {
    await keepScreen(page, name, true);
    expect(await findings(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(
      0,
    );
  };

  /** Agreed days of the first works, a day that weather takes, and a photo that the office released. */
  const fillTheWeek = async (companyId: string) => {
    const { database } = stage;
    const at = (day: number, hour: number) => new Date(Date.UTC(2031, 0, day, hour));
    for (const [kind, from, to] of [
      ['demo', at(7, 13), at(7, 21)],
      ['dig', at(8, 13), at(9, 21)],
    ] as const) {
      const phase = await database.phase.findFirstOrThrow({ where: { companyId, kind } });
      const dates = { startAt: from, finishAt: to, madeAt: at(6, 13) };
      await database.commitment.create({ data: { companyId, phaseId: phase.id, ...dates } });
    }
    const { siteId } = await database.job.findFirstOrThrow({ where: { companyId } });
    const hours = { startsAt: at(9, 5), endsAt: at(10, 4) };
    await database.weatherHold.create({
      data: { companyId, siteId, cause: 'called', reason: 'snow', ...hours },
    });
    const demo = await database.phase.findFirstOrThrow({ where: { companyId, kind: 'demo' } });
    const picture = { create: { width: 640, height: 480, channels: 3, background: '#8c7a5b' } } as const;
    const bytes = new Uint8Array(await sharp(picture).jpeg().toBuffer());
    const file = { companyId, hash: 'steps', bytes, small: bytes, width: 640, height: 480 };
    await database.photoFile.create({ data: file });
    const taken = { takenAt: at(6, 13), addedAt: at(6, 13), releasedAt: at(6, 13) };
    const of = { companyId, jobId: demo.jobId, phaseId: demo.id, sentHash: 'steps', fileHash: 'steps' };
    await database.photo.create({ data: { ...of, ...taken, caption: 'The old steps' } });
  };

  it.each([
    ['phone', PHONE],
    ['desk', DESK],
  ] as const)(
    'from the mail leads the electrician to the sheet, a booked day and a recorded hookup, %s',
    async (name, screen) => {
      const address = await mailed();
      const page = await freshPage(stage.browser, screen);
      await page.goto(address);
      await clean(page, `link-button-${name}`);
      await page.getByRole('button', { name: 'Open the hookup sheet' }).click();
      await page.waitForURL(/\/sheet\//);
      await settled(page);
      expect(page.url()).not.toContain(address.split('/').at(-1));
      expect(await page.evaluate(() => document.referrer)).toBe('');
      await page.getByText('Ready: everything below is met').waitFor();
      await clean(page, `hookup-sheet-ready-${name}`);

      await page.getByLabel('Day').fill('2031-01-08');
      await page.getByRole('button', { name: 'Book', exact: true }).click();
      await page.getByText('Booked for Wed 8 Jan').waitFor();

      await page.getByLabel('Breaker, A').fill('15');
      await page.getByRole('button', { name: 'Record', exact: true }).click();
      await page.getByText('take it and record it').waitFor();
      await entry.read('beforeHookup');
      await page.getByRole('button', { name: 'Record', exact: true }).click();
      await page.getByText('too small for a continuous load of 12.5 A').first().waitFor();
      await clean(page, `hookup-sheet-refused-${name}`);

      await page.getByLabel('Breaker, A').fill('20');
      await page.getByLabel('Disconnect in place').check();
      await page.getByLabel('Ground-fault protection').check();
      await page.getByRole('button', { name: 'Record', exact: true }).click();
      await page.getByText(`Recorded by ${entry.job.people.electrician.name}`).waitFor();
      await clean(page, `hookup-sheet-done-${name}`);

      // The same browser finds its page by the mail again; another one has a button of its own.
      await page.goto(address);
      await page.waitForURL(/\/sheet\//);
      await page.context().close();
    },
    PATIENCE,
  );

  it(
    'is opened, and a day booked by it, with keys alone',
    async () => {
      const page = await freshPage(stage.browser, DESK);
      await page.goto(await mailed());
      await page.keyboard.press('Tab');
      await page.keyboard.press('Enter');
      await page.waitForURL(/\/sheet\//);
      await settled(page);
      const focused = () =>
        page.evaluate(() => {
          const { activeElement: one } = document;
          return `${one?.tagName} ${one?.getAttribute('name') ?? one?.textContent ?? ''}`;
        });
      for (let steps = 0; steps < 30 && (await focused()) !== 'INPUT day'; steps += 1)
        await page.keyboard.press('Tab');
      expect(await focused()).toBe('INPUT day');
      await page.keyboard.type('01092031');
      for (let steps = 0; steps < 5 && (await focused()) !== 'BUTTON Book'; steps += 1)
        await page.keyboard.press('Tab');
      expect(await focused()).toBe('BUTTON Book');
      await page.keyboard.press('Enter');
      await page.getByText('Booked for Thu 9 Jan').waitFor();
      await page.context().close();
    },
    PATIENCE,
  );

  it(
    'that nobody made, that ran out of use, or whose page is opened elsewhere says what to do',
    async () => {
      const page = await freshPage(stage.browser, PHONE);
      const forged = await page.goto(`${stage.url}/links/${'a'.repeat(43)}`);
      expect(forged?.status()).toBe(404);
      await page.getByText('Nothing is found under this link').waitFor();
      await clean(page, 'link-unknown-phone');
      const address = await mailed();
      await page.goto(address);
      await page.getByRole('button').click();
      await page.waitForURL(/\/sheet\//);
      const sheet = page.url();
      const other = await freshPage(stage.browser, PHONE);
      expect((await other.goto(sheet))?.status()).toBe(403);
      await other.getByText('This page is not open in this browser').waitFor();
      await clean(other, 'link-elsewhere-phone');
      await other.context().close();
      await page.context().close();
    },
    PATIENCE,
  );

  it(
    'is made by the office on the page of a job, read by the owner, and taken back while it is read',
    async () => {
      const office = await makeOffice(stage);
      await office.enterJob();
      const desk = await freshPage(stage.browser, DESK);
      await desk.goto(`${stage.url}/sign-in`);
      await desk.getByLabel('E-mail').fill(office.people.office.email);
      await desk.getByLabel('Password').fill(TEST_PASSWORD);
      await desk.getByRole('button', { name: 'Sign in', exact: true }).click();
      await desk.waitForURL((address) => address.pathname !== '/sign-in');
      await fillTheWeek(office.company.id);
      await openPage(desk, `${stage.url}/jobs/101`);
      await desk.getByRole('button', { name: 'Make the link' }).focus();
      await desk.keyboard.press('Enter');
      const shown = desk.getByLabel('Address of the link');
      await shown.waitFor();
      const links = desk.getByRole('region', { name: 'Links for people without an account' }).first();
      await links.screenshot({ path: 'test/browser/screens/job-links-desk.png' });
      expect(await findings(desk)).toEqual([]);

      const phone = await freshPage(stage.browser, PHONE);
      await phone.goto(await shown.inputValue());
      await phone.getByRole('button', { name: 'Open the week at your entry' }).tap();
      await phone.waitForURL(/\/week\//);
      await settled(phone);
      await phone.getByRole('heading', { name: /next seven days/ }).waitFor();
      expect(
        await phone
          .getByRole('listitem')
          .filter({ has: phone.locator('time') })
          .count(),
      ).toBe(7);
      await phone.getByText('Move cars away from the front').waitFor();
      await phone.getByText('the crew has stopped it').first().waitFor();
      const picture = phone.getByRole('img', { name: /The old steps/ });
      await picture.scrollIntoViewIfNeeded();
      await phone.waitForFunction(() => {
        const image = document.querySelector<HTMLImageElement>('.photo img');
        return image !== null && image.complete && image.naturalWidth > 0;
      });
      await phone.getByText('leave its switch and its breaker off').waitFor();
      await clean(phone, 'owner-week-phone');
      await phone.setViewportSize(DESK.viewport);
      await clean(phone, 'owner-week-desk');

      await openPage(desk, `${stage.url}/jobs/101`);
      await desk.getByText('in 1 browser').waitFor();
      await desk.getByRole('button', { name: /Take back the link of R. Alder/ }).press('Enter');
      await desk.getByText(/taken back Mon 6 Jan/).waitFor();
      // The open page asks again when it is looked at.
      await phone.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
      await phone.getByText('This page cannot be shown').waitFor();
      await phone.getByText('ask whoever sent it for a new one').waitFor();
      await clean(phone, 'owner-week-ended-desk');
      await phone.context().close();
      await desk.context().close();
    },
    PATIENCE,
  );
});
