import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import type { Browser, Page } from 'playwright-core';
import { startBrowser } from '../support/browser.js';
import { findings } from './support/accessibility.js';
import { type DemoService, startDemoService } from './support/demo-service.js';
import { freshPage, keepScreen, openPage, PHONE, signInAs, thrown } from './support/pages.js';

/* No change may be lost silently: what has no answer stays on the screen, and a second try cannot do it twice. */

describe('a change whose answer is lost', () => {
  let service: DemoService;
  let browser: Browser;
  let phone: Page;

  beforeAll(async () => {
    service = await startDemoService();
    browser = await startBrowser();
    phone = await freshPage(browser, PHONE);
    await signInAs(phone, service.url, 'foreman');
  }, 600_000);
  afterAll(async () => {
    await browser.close();
    await service.stop();
    expect(thrown).toEqual([]);
  });

  const heldSites = async () => {
    const foreman = await service.client('foreman');
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
    await openPage(phone, `${service.url}/site`);
    await phone.getByText('Not sent: Weather hold').waitFor();
    await phone.getByRole('button', { name: 'Try again' }).tap();
    await phone.getByText('Done: Weather hold').waitFor();
    expect(await heldSites()).toHaveLength(2);
    await phone.getByRole('button', { name: 'Put away' }).tap();
    await openPage(phone, `${service.url}/site`);
    expect(await phone.getByText('Not sent').count()).toBe(0);
  });
});
