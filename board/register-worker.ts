/** Lets the service worker keep the shell on this device. Addresses that are not secure have none; pages work on. */
export function registerWorker(): void {
  if (!('serviceWorker' in navigator)) return;
  addEventListener('load', () => {
    navigator.serviceWorker.register('/service-worker.js').catch((error: unknown) => {
      // While the client is built anew under a running service there may be none for a moment.
      if (!(error instanceof TypeError) && !(error instanceof DOMException)) throw error;
    });
  });
}
