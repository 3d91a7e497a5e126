import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/**
 * Starts a Chromium that draws without a graphics card.
 *
 * @throws Error saying what to install when there is none.
 */
export function startChromium(): Promise<Browser> {
  const executablePath = process.env['CHROMIUM_PATH'] ?? PLACES.find((place) => existsSync(place));
  if (!executablePath)
    throw new Error(
      'Chromium was not found: install it (Debian: apt-get install chromium) or set CHROMIUM_PATH.',
    );
  const args = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-sync'];
  return chromium.launch({ executablePath, headless: true, args });
}
