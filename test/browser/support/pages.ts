import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Browser, Locator, Page } from 'playwright-core';

/** Screens that the tests run on: the office's desk and the foreman's phone. */
export const DESK = { viewport: { width: 1440, height: 900 } } as const;
export const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true } as const;

/** People of the demo as their buttons on the sign-in page name them. */
export const PEOPLE = { office: 'Ines Rowe', foreman: 'Tobias Hale', electrician: 'Mara Voss' } as const;

export type PersonOfDemo = keyof typeof PEOPLE;

const SCREENS = fileURLToPath(new URL('../screens/', import.meta.url));

/** What the pages' own scripts threw; a suite ends by demanding that there is nothing here. */
export const thrown: string[] = [];

/**
 * A page of a fresh profile, without anybody signed in. Its shell is kept by a service worker only where a test is
 * about that: what a worker answers passes by the routes of a test.
 */
export async function freshPage(
  browser: Browser,
  screen: typeof DESK | typeof PHONE,
  serviceWorkers: 'allow' | 'block' = 'block',
): Promise<Page> {
  const context = await browser.newContext({ ...screen, serviceWorkers });
  const page = await context.newPage();
  page.setDefaultTimeout(30_000);
  page.on('pageerror', (error) => thrown.push(error.stack ?? error.message));
  return page;
}

/** Signs in by the person's button and waits for the page they land on. */
export async function signInAs(page: Page, url: string, person: PersonOfDemo): Promise<void> {
  await page.goto(`${url}/sign-in`);
  await page.getByRole('button', { name: PEOPLE[person] }).click();
  await page.waitForURL((address) => address.pathname !== '/sign-in');
  await settled(page);
}

/** Opens a page of the client and waits until what it asked for is drawn. */
export async function openPage(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await settled(page);
}

/** Waits until no part of the page says that it is still asking. */
export async function settled(page: Page): Promise<void> {
  await page.locator('main').first().waitFor();
  await page.waitForFunction(() => !/One moment|Asking for|Drawing the board/.test(document.body.innerText));
}

/** Keeps a picture of the page for people to look at. */
export async function keepScreen(page: Page, name: string, fullPage = false): Promise<void> {
  mkdirSync(SCREENS, { recursive: true });
  await page.screenshot({ path: `${SCREENS}${name}.png`, fullPage });
}

/** Keeps a picture of a part of the page. */
export async function keepPart(part: Locator, name: string): Promise<void> {
  mkdirSync(SCREENS, { recursive: true });
  await part.screenshot({ path: `${SCREENS}${name}.png` });
}

/** Opens one phase of the site sheet by its title with the number of its job; another one that is open makes way. */
export async function openPhase(phone: Page, title: string): Promise<Locator> {
  const back = phone.getByRole('link', { name: 'Back to the day' });
  const card = phone.getByRole('article', { name: title, exact: true });
  if ((await back.count()) > 0 && (await card.count()) === 0) await back.click();
  if ((await back.count()) === 0) await card.getByRole('link').first().click();
  await back.waitFor();
  return card;
}
