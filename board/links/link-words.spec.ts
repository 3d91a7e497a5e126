import { describe, expect, it } from '@jest/globals';
import { openedWords, stateWords } from './link-words.js';

const ZONE = 'America/New_York';
const link = (more: object = {}) =>
  ({
    state: 'live',
    expiresAt: '2031-03-07T14:00:00Z',
    revokedAt: null,
    browsers: 0,
    lastOpenedAt: null,
    refusedOpenings: 0,
    ...more,
  }) as unknown as Parameters<typeof stateWords>[0];

describe('a link as the office reads it', () => {
  it.each([
    [{}, 'open until Fri 7 Mar'],
    [{ state: 'expired' }, 'ran out Fri 7 Mar'],
    [{ state: 'revoked', revokedAt: '2031-01-06T14:00:00Z' }, 'taken back Mon 6 Jan 09:00'],
    [{ state: 'revoked' }, 'account closed'],
  ])('stands: %j', (more, words) => {
    expect(stateWords(link(more), ZONE)).toBe(words);
  });

  it.each([
    [{}, 'never'],
    [{ browsers: 1, lastOpenedAt: '2031-01-06T14:00:00Z' }, 'Mon 6 Jan 09:00, in 1 browser'],
    [
      { browsers: 3, lastOpenedAt: '2031-01-06T14:00:00Z', refusedOpenings: 2 },
      'Mon 6 Jan 09:00, in 3 browsers; 2 refused',
    ],
  ])('was opened: %j', (more, words) => {
    expect(openedWords(link(more), ZONE)).toBe(words);
  });
});
