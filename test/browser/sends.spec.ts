import { beforeAll, describe, expect, it } from '@jest/globals';
import type { Page } from 'playwright-core';
import { findings } from './support/accessibility.js';
import { demoStage } from './support/demo-stage.js';
import { until } from '../support/until.js';
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

  const unsent = (count: number) =>
    phone.getByRole('button', { name: count ? `${count} unsent` : 'All sent' });

  it('is counted as unsent while the service cannot be reached, and is sent by itself afterwards', async () => {
    await phone.route('**/graphql', (route) => route.abort('connectionfailed'));
    await callHold('Rain, rest of today');
    await unsent(1).tap();
    await phone.getByText('Not sent: Weather hold').waitFor();
    await phone.locator('.site-weather').first().getByText('Called: Rain').waitFor();
    await keepScreen(phone, 'phone-not-sent');
    expect(await findings(phone)).toEqual([]);
    expect(await heldSites()).toEqual([]);
    await phone.unroute('**/graphql');
    await unsent(0).waitFor();
    await phone.getByText('Done: Weather hold').waitFor();
    expect(await heldSites()).toMatchObject([{ reason: 'Rain' }]);
    await phone.getByRole('button', { name: 'Put away' }).tap();
    await unsent(0).tap();
  });

  it('is given up by the person alone', async () => {
    await phone.route('**/graphql', (route) => route.abort('connectionfailed'));
    await callHold('Snow or ice, rest of today');
    await unsent(1).tap();
    await phone.getByRole('button', { name: 'Give up this change' }).tap();
    await unsent(0).waitFor();
    await phone.unroute('**/graphql');
    expect(await heldSites()).toHaveLength(1);
    await unsent(0).tap();
  });

  it('has one effect when it had arrived, even after the page was left and opened again', async () => {
    await phone.route('**/graphql', async (route) => {
      if (route.request().postData()?.includes('callWeatherHold')) {
        await route.fetch();
        // The page may be left while the request is held: then there is nothing to abort any more.
        await route.abort('connectionreset').catch(() => undefined);
      } else {
        await route.continue();
      }
    });
    await callHold('Wind, until lifted');
    await unsent(1).waitFor();
    await until('the hold is on record', async () => (await heldSites()).length === 2);
    await openPage(phone, `${stage.service.url}/site`);
    await unsent(1).waitFor();
    await phone.unroute('**/graphql');
    await unsent(0).waitFor();
    expect(await heldSites()).toHaveLength(2);
    await openPage(phone, `${stage.service.url}/site`);
    await unsent(0).waitFor();
  });
});
