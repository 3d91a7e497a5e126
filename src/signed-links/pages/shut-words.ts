import type { Contact } from '../contacts.js';
import type { Shut } from '../door/link-door.js';
import { MOST_BROWSERS } from '../purposes.js';

/** What a page says that a link does not open. */
export interface ShutWords {
  readonly status: number;
  readonly title: string;
  readonly paragraphs: readonly string[];
}

/** Whom to ask, in a sentence. */
export function askWords(contact: Contact | null): string {
  if (!contact?.askName) return 'Ask whoever sent it to you for a new one.';
  const where = contact.askEmail ? ` (${contact.askEmail})` : '';
  return `Ask ${contact.askName} of ${contact.companyName}${where} for a new one.`;
}

/** Says why a link opens nothing, and what to do. */
export function shutWords(shut: Shut['shut'], contact: Contact | null): ShutWords {
  const ask = askWords(contact);
  switch (shut) {
    case 'unknown':
      return {
        status: 404,
        title: 'Nothing is found under this link',
        paragraphs: [
          'Mail programs sometimes break long links into two. Copy the whole of it, to its last letter, into the address line.',
          ask,
        ],
      };
    case 'expired':
      return {
        status: 410,
        title: 'This link has run out',
        paragraphs: ['A link lasts for a set number of days, and those of this one are over.', ask],
      };
    case 'revoked':
      return {
        status: 410,
        title: 'This link was taken back',
        paragraphs: ['It opens nothing any more. If you still need the page, it takes another link.', ask],
      };
    case 'full':
      return {
        status: 403,
        title: 'This link is open in other browsers already',
        paragraphs: [
          `A link opens in ${MOST_BROWSERS} browsers, and this would be one more. Use one of those in which you opened it before. If that was not you, tell the office at once.`,
          ask,
        ],
      };
    case 'guessing':
      return {
        status: 429,
        title: 'Too many tries',
        paragraphs: [
          'From your connection, links that do not exist were tried again and again. Wait a minute and open your link once more.',
        ],
      };
  }
}

/** What the address of a page says in a browser in which its link is not open. */
export const NOT_OPEN_HERE: ShutWords = {
  status: 403,
  title: 'This page is not open in this browser',
  paragraphs: [
    'It is opened by the link that you were sent: open that link, in this browser, and press its button.',
    'If it does not help, the link has run out or was taken back. Ask whoever sent it to you for a new one.',
  ],
};
