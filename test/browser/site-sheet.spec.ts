import { beforeAll, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { until } from '../support/until.js';
import { demoStage } from './support/demo-stage.js';
import { findings } from './support/accessibility.js';
import { keepScreen, openPage, PHONE } from './support/pages.js';

describe('the site sheet on a phone', () => {
  const stage = demoStage();
  let phone: Page;

  beforeAll(async () => {
    phone = await stage.pageOf('foreman', PHONE);
  });

  it('is where a foreman lands', () => {
    expect(new URL(phone.url()).pathname).toBe('/site');
  });

  it('fits the width of the phone', async () => {
    const wider = await phone.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wider).toBe(0);
  });

  it('has nothing to press that is smaller than a gloved finger', async () => {
    await phone.evaluate(() => {
      for (const sheet of document.querySelectorAll('details')) sheet.open = true;
    });
    // Common practice, no source: 48 px for gloves; WCAG 2.2 (2.5.8) asks for 24.
    const small = await phone.evaluate(() =>
      [
        ...document.querySelectorAll(
          'button, summary, input:not([type=checkbox]), label:has(input[type=checkbox])',
        ),
      ]
        .filter((element) => element.getBoundingClientRect().height < 48)
        .map((element) => element.textContent || element.getAttribute('name')),
    );
    expect(small).toEqual([]);
  });

  it('says what stands in the way of a phase and who lifts it', async () => {
    const foreman = await stage.service.client('foreman');
    const { today } = await foreman.data<{
      today: { obstacles: { message: string; liftedBy: string | null }[] }[];
    }>('{ today { obstacles { message liftedBy } } }');
    const obstacles = today.flatMap((phase) => phase.obstacles);
    expect(obstacles.length).toBeGreaterThan(0);
    const said = (await phone.locator('main').innerText()).replaceAll(/\s+/g, ' ');
    for (const { message, liftedBy } of obstacles) {
      expect(said).toContain(message.replaceAll(/\s+/g, ' '));
      if (liftedBy === 'foreman') expect(said).toContain('Lifted by: you.');
      if (liftedBy === 'office') expect(said).toContain('Lifted by: office.');
    }
  });

  it('shows one phase alone, and the way back', async () => {
    await phone.locator('article').first().getByRole('link').tap();
    expect(await phone.locator('article').count()).toBe(1);
    for (const sheet of await phone.locator('article details').all())
      await sheet.evaluate((element: HTMLDetailsElement) => (element.open = true));
    await keepScreen(phone, 'phone-one-phase', true);
    expect(await findings(phone)).toEqual([]);
    await phone.getByRole('link', { name: 'Back to the day' }).tap();
    expect(await phone.locator('article').count()).toBeGreaterThan(1);
  });

  it('takes the temperature of a curing placement, and says why a cure is not released yet', async () => {
    const foreman = await stage.service.client('foreman');
    const { today: phases } = await foreman.data<{
      today: { id: string; holdPoints: { kind: string; state: string }[] }[];
    }>('{ today { id holdPoints { kind state } } }');
    const curing = phases.find(({ holdPoints }) =>
      holdPoints.some(({ kind, state }) => kind === 'cure' && state === 'open'),
    );
    await openPage(phone, `${stage.service.url}/site?phase=${curing?.id}`);
    const sheet = phone.locator('details', { hasText: '(cure,' }).first();
    await sheet.evaluate((element: HTMLDetailsElement) => (element.open = true));
    await sheet.getByLabel('Temperature in the concrete or mortar').fill('41,5');
    await sheet.getByRole('button', { name: 'Record the temperature' }).tap();
    await phone.getByText('Done: Temperature in').waitFor();
    const { today } = await foreman.data<{
      today: { job: { placements: { readings: { concreteF: number }[] }[] } }[];
    }>('{ today { job { placements { readings { concreteF } } } } }');
    const read = today.flatMap(({ job }) => job.placements.flatMap(({ readings }) => readings));
    expect(read.map(({ concreteF }) => concreteF)).toContain(41.5);
    await sheet.getByRole('button', { name: 'Release' }).tap();
    await phone
      .locator('.outcome-refused')
      .getByText(/psi are needed|No placement is recorded/)
      .waitFor();
    await keepScreen(phone, 'phone-cure-refused');
    const away = phone.getByRole('button', { name: 'Put away' });
    for (let left = await away.count(); left > 0; left -= 1) {
      await away.first().tap();
      await until('an outcome is put away', async () => (await away.count()) < left);
    }
  });

  it('takes a note and what is left of a started phase, and shows both', async () => {
    const foreman = await stage.service.client('foreman');
    const { today: phases } = await foreman.data<{
      today: { id: string; state: string; durationKind: string }[];
    }>('{ today { id state durationKind } }');
    // What cures is started too, and has no work left for a crew.
    const worked = phases.find(({ state, durationKind }) => state === 'started' && durationKind === 'work');
    await openPage(phone, `${stage.service.url}/site?phase=${worked?.id}`);
    await phone.getByText('Write a note').tap();
    await phone.getByLabel('Note for the next crew').fill('Hose frozen, thaw it first');
    await phone.getByRole('button', { name: 'Keep the note' }).tap();
    await phone.getByText('Note: Hose frozen, thaw it first').waitFor();
    await phone.getByText('Tell how much is left').tap();
    await phone.getByLabel('Work left for the crew').fill('2,5');
    await phone.getByRole('button', { name: 'Tell the office' }).tap();
    await phone.getByText('Left: 2 h 30 min').waitFor();
    await phone.getByRole('button', { name: 'All sent' }).waitFor();
    const { today } = await foreman.data<{
      today: { note: string | null; remainingMinutes: number | null }[];
    }>('{ today { note remainingMinutes } }');
    expect(today).toContainEqual({ note: 'Hose frozen, thaw it first', remainingMinutes: 150 });
    await openPage(phone, `${stage.service.url}/site`);
  });

  it('calls a weather hold in two touches and lifts it in one', async () => {
    const site = phone.locator('.site-weather').first();
    await site.getByRole('button', { name: 'Call a weather hold' }).tap();
    await site.getByRole('button', { name: 'Snow or ice, rest of today' }).tap();
    await site.getByText('Called: Snow or ice').waitFor();
    await keepScreen(phone, 'phone-weather-hold', true);
    await site.getByRole('button', { name: 'Lift this hold' }).tap();
    await site.getByText('Called: Snow or ice').waitFor({ state: 'detached' });
  });
});
