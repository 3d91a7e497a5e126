import { existsSync } from 'node:fs';
import { chromium, type Browser } from 'playwright-core';

/*
 * The system's Chromium, without a profile of anybody's.
 *
 *   const browser = await startBrowser();
 *   const page = await browser.newPage({ viewport: { width: 390, height: 844 } });
 *   await browser.close();
 */

const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Starts the browser; CHROMIUM_PATH names another one. @throws Error saying what to install when there is none. */
export function startBrowser(): Promise<Browser> {
  const executablePath = process.env['CHROMIUM_PATH'] ?? PLACES.find((place) => existsSync(place));
  if (!executablePath) {
    throw new Error(
      'Chromium was not found: install it (Debian: apt-get install chromium) or set CHROMIUM_PATH.',
    );
  }
  return chromium.launch({
    executablePath,
    headless: true,
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
