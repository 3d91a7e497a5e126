import { useEffect } from 'react';
import type { Outbox } from './outbox/outbox.js';

const FIRST_PAUSE = 2_000;
const LONGEST_PAUSE = 60_000;

/** Sends by itself: when the service is heard again, when the page is looked at, and from time to time. */
export function useSending(outbox: Outbox | null, connected: boolean): void {
  useEffect(() => {
    if (!outbox) return;
    let pause = FIRST_PAUSE;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const later = () => {
      clearTimeout(timer);
      timer = setTimeout(() => {
        pause = Math.min(2 * pause, LONGEST_PAUSE);
        if (outbox.snapshot().unsent > 0) void outbox.drain().finally(later);
        else later();
      }, pause);
    };
    const now = () => {
      pause = FIRST_PAUSE;
      if (document.visibilityState === 'visible') void outbox.drain().finally(later);
    };
    now();
    addEventListener('online', now);
    document.addEventListener('visibilitychange', now);
    return () => {
      clearTimeout(timer);
      removeEventListener('online', now);
      document.removeEventListener('visibilitychange', now);
    };
  }, [outbox, connected]);
}
