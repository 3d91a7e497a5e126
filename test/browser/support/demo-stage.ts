import { afterAll, beforeAll, expect } from '@jest/globals';
import type { Browser, Page } from 'playwright-core';
import { startBrowser } from '../../support/browser.js';
import { demoDatabase } from './demo-database.js';
import { type DemoService, startDemoService } from './demo-service.js';
import { type DESK, freshPage, openPage, type PersonOfDemo, type PHONE, signInAs, thrown } from './pages.js';

/** Loading the demo, which the first suite does for all, takes a while. */
const START = 600_000;

/** What a suite plays on: the demo served by a process of its own, and a browser. */
export interface DemoStage {
  readonly service: DemoService;
  readonly browser: Browser;
  /** A page of a fresh profile with a person of the demo signed in, at a path of the client when one is given. */
  readonly pageOf: (person: PersonOfDemo, screen: typeof DESK | typeof PHONE, path?: string) => Promise<Page>;
}

/**
 * Sets the stage before the tests of the suite that calls it and clears it after them; the suite fails when a script
 * of a page has thrown. `database` is what it plays on: the demo as worked, unless the suite needs less.
 */
export function demoStage(database = demoDatabase): DemoStage {
  let service: DemoService | null = null;
  let browser: Browser | null = null;
  beforeAll(async () => {
    service = await startDemoService(await database());
    browser = await startBrowser();
  }, START);
  afterAll(async () => {
    await browser?.close();
    await service?.stop();
    expect(thrown).toEqual([]);
  });
  const demand = <T>(one: T | null): T => {
    if (!one) throw new Error('The stage is set before the first test; use it within tests.');
    return one;
  };
  return {
    get service() {
      return demand(service);
    },
    get browser() {
      return demand(browser);
    },
    pageOf: async (person, screen, path) => {
      const page = await freshPage(demand(browser), screen);
      const { url } = demand(service);
      await signInAs(page, url, person);
      if (path) await openPage(page, url + path);
      return page;
    },
  };
}
