import { clientsClaim } from 'workbox-core';
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  type PrecacheEntry,
  precacheAndRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';

/* Keeps the shell of the client on the device, so that its pages open without a signal. Data is kept by the pages. */

/** Every file of the shell with its revision; the build puts the list here. */
declare const SHELL_FILES: PrecacheEntry[];

precacheAndRoute(SHELL_FILES);
cleanupOutdatedCaches();
// Every page is the one document; files and the API are not pages.
registerRoute(
  new NavigationRoute(createHandlerBoundToURL('/index.html'), {
    denylist: [/^\/(graphql|files|health|loggers|links|sheet|week)/],
  }),
);

// A new version takes over at once: the shell is one script, so a page that is open has all of the old one already.
void (globalThis as unknown as { skipWaiting(): Promise<void> }).skipWaiting();
clientsClaim();
