import { CHANGE_DOCUMENTS } from './change-documents.js';
import type { Send } from './send.js';

const PREFIX = 'flagway.unsent.';

/** Writes what has no answer yet to the device, so that neither a reload nor a killed page loses it. */
export function keepSends(personId: string, sends: readonly Send[]): void {
  const open = sends.filter(({ state }) => state === 'sending' || state === 'unsent');
  if (open.length > 0) localStorage.setItem(PREFIX + personId, JSON.stringify(open));
  else localStorage.removeItem(PREFIX + personId);
}

/** What this person sent from this device and never saw answered. */
export function keptSends(personId: string): Send[] {
  return stored(PREFIX + personId)
    .filter(({ change }) => change in CHANGE_DOCUMENTS)
    .map((send) => ({
      ...send,
      state: 'unsent' as const,
      message: 'No answer came before the page was left. Trying again cannot do it twice.',
    }));
}

function stored(name: string): Send[] {
  const text = localStorage.getItem(name);
  if (!text) return [];
  try {
    return JSON.parse(text) as Send[];
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    // Cut off in the middle by the device: set aside rather than overwritten, and the page stays usable.
    localStorage.setItem(`${name}.unreadable`, text);
    return [];
  }
}
