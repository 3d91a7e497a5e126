import { once } from 'node:events';
import { connect } from 'node:net';
import { beforeAll, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { findings } from './support/accessibility.js';
import { demoStage } from './support/demo-stage.js';
import { DESK, keepScreen, openPhase, PHONE } from './support/pages.js';
import { startedWork, type StartedWork } from './support/started-work.js';

/* The foreman's phone and the office's open board side by side; nobody loads a page again. */

describe('a phase marked on the phone', () => {
  const stage = demoStage();
  let board: Page;
  let phone: Page;
  let work: StartedWork;

  beforeAll(async () => {
    work = await startedWork(stage.service);
    board = await stage.pageOf('office', DESK);
    phone = await stage.pageOf('foreman', PHONE);
  });

  const card = () => phone.getByRole('article', { name: work.title, exact: true });
  const barSays = (state: string) =>
    board.locator(`[id="bar-${work.id}"][aria-label*=": ${state}."]`).waitFor();

  it('is refused in full words while checks before its finish are open', async () => {
    await barSays('started');
    await openPhase(phone, work.title);
    await card().getByRole('button', { name: 'Finish' }).click();
    const refusal = phone.locator('.outcome-refused');
    await refusal.waitFor();
    const said = await refusal.innerText();
    expect(said).toContain(`Refused: Finish ${work.title}`);
    for (const { title } of work.checks) expect(said).toContain(title);
    await keepScreen(phone, 'phone-refused');
    expect(await findings(phone)).toEqual([]);
    await refusal.getByRole('button', { name: 'Put away' }).click();
  });

  it('has its checks released with measured values', async () => {
    for (const { title, values } of work.checks) {
      const sheet = card().locator('details', { hasText: title });
      await sheet.locator('summary').click();
      for (const { itemId, value, values: many, confirmed } of values) {
        const field = sheet.locator(`[name="${itemId}"]`);
        if (confirmed) await field.check();
        else await field.fill(many ? many.join(' ') : String(value));
      }
      await keepScreen(phone, 'phone-check');
      await sheet.getByRole('button', { name: 'Release' }).click();
      await phone.getByText(`Done: Release ${title}`).waitFor();
      await sheet.waitFor({ state: 'detached' });
    }
  });

  it('is done, and stands done on the open board without anybody asking for it', async () => {
    await card().getByRole('button', { name: 'Finish' }).click();
    await phone.getByText(`Done: Finish ${work.title}`).waitFor();
    await barSays('done');
    await keepScreen(phone, 'phone-done');
    await keepScreen(board, 'board-after-phone');
  });

  it('stands started again after it was put back', async () => {
    await phone.getByRole('button', { name: 'Put back' }).click();
    await phone.getByText(`Done: Put back`).waitFor();
    await barSays('started');
  });

  it('reaches a board whose service was away in the meantime', async () => {
    // Browsers open sockets ahead of use; one that never asks for anything must not keep the service from stopping.
    const silent = connect(Number(new URL(stage.service.url).port), 'localhost');
    await once(silent, 'connect');
    await stage.service.restart();
    silent.destroy();
    const foreman = await stage.service.client('foreman');
    expect(await foreman.change('finishPhase', { phaseId: work.id })).toMatchObject({
      __typename: 'PhaseChanged',
    });
    await barSays('done');
    await board.getByRole('status').getByText('live', { exact: true }).waitFor();
  });
});
