import { describe, expect, it } from '@jest/globals';
import { dateWords } from './date-words.js';

describe('a date in words', () => {
  // ISO 8601 calendar dates with their weekdays: 2031-01-06 is the Monday of week 2031-W02.
  it.each([
    ['2031-01-06', 'Monday, January 6'],
    ['2031-12-31', 'Wednesday, December 31'],
    ['2032-02-29', 'Sunday, February 29'],
  ])('%s', (date, words) => {
    expect(dateWords(date)).toBe(words);
  });
});
