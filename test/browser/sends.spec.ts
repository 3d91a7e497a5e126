import { beforeAll, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { findings } from './support/accessibility.js';
import { demoStage } from './support/demo-stage.js';
import { keepScreen, openPage, PHONE } from './support/pages.js';

/* No change may be lost silently: what has no answer stays on the screen, and a second try cannot do it twice. */

describe('a change whose answer is lost', () => {
  const stage = demoStage();
  let phone: Page;

  beforeAll(async () => {
    phone = await stage.pageOf('foreman', PHONE);
  });

  const heldSites = async () => {
    const foreman = await stage.service.client('foreman');
    const { sites } = await foreman.data<{
      sites: { edges: { node: { weatherHolds: { cause: string; reason: string }[] } }[] };
    }>('{ sites(first: 50) { edges { node { weatherHolds(activeOnly: true) { cause reason } } } } }');
    return sites.edges.flatMap(({ node }) => node.weatherHolds).filter(({ cause }) => cause === 'called');
  };
  const callHold = async (cause: string) => {
    const site = phone.locator('.site-weather').first();
    await site.getByRole('button', { name: 'Call a weather hold' }).tap();
    await site.getByRole('button', { name: cause }).tap();
  };

  it('is shown as not sent when the service cannot be reached, and is sent by one more touch', async () => {
    await phone.route('**/graphql', (route) => route.abort('connectionfailed'));
    await callHold('Rain, rest of today');
    await phone.getByText('Not sent: Weather hold').waitFor();
    await keepScreen(phone, 'phone-not-sent');
    expect(await findings(phone)).toEqual([]);
    expect(await heldSites()).toEqual([]);
    await phone.unroute('**/graphql');
    await phone.getByRole('button', { name: 'Try again' }).tap();
    await phone.getByText('Done: Weather hold').waitFor();
    expect(await heldSites()).toMatchObject([{ reason: 'Rain' }]);
    await phone.getByRole('button', { name: 'Put away' }).tap();
  });

  it('has one effect when it had arrived, even after the page was left and opened again', async () => {
    await phone.route('**/graphql', async (route) => {
      if (route.request().postData()?.includes('callWeatherHold')) {
        await route.fetch();
        await route.abort('connectionreset');
      } else {
        await route.continue();
      }
    });
    await callHold('Wind, until lifted');
    await phone.getByText('Not sent: Weather hold').waitFor();
    expect(await heldSites()).toHaveLength(2);
    await phone.unroute('**/graphql');
    await openPage(phone, `${stage.service.url}/site`);
    await phone.getByText('Not sent: Weather hold').waitFor();
    await phone.getByRole('button', { name: 'Try again' }).tap();
    await phone.getByText('Done: Weather hold').waitFor();
    expect(await heldSites()).toHaveLength(2);
    await phone.getByRole('button', { name: 'Put away' }).tap();
    await openPage(phone, `${stage.service.url}/site`);
    expect(await phone.getByText('Not sent').count()).toBe(0);
  });
});
