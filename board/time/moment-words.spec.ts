import { describe, expect, it } from '@jest/globals';
import { durationWords, isoWords, momentWords, stretchWords } from './moment-words.js';

const ZONE = 'America/New_York';
const at = (iso: string) => Date.parse(iso);

describe('moments in words', () => {
  it('are told in the zone of the company', () => {
    expect(momentWords(at('2031-01-13T12:30:00Z'), ZONE)).toBe('Mon 13 Jan 07:30');
    expect(momentWords(at('2031-01-13T05:00:00Z'), ZONE)).toBe('Mon 13 Jan 00:00');
  });

  it('name the day once when a stretch stays within it', () => {
    expect(stretchWords(at('2031-01-13T12:30:00Z'), at('2031-01-13T20:00:00Z'), ZONE)).toBe(
      'Mon 13 Jan 07:30 to 15:00',
    );
  });

  it('name both days when it does not', () => {
    expect(stretchWords(at('2031-01-13T12:30:00Z'), at('2031-01-14T20:00:00Z'), ZONE)).toBe(
      'Mon 13 Jan 07:30 to Tue 14 Jan 15:00',
    );
  });

  it('say what is missing instead of a wrong date', () => {
    expect(isoWords(null, ZONE)).toBe('not known');
    expect(isoWords(undefined, ZONE, 'no day yet')).toBe('no day yet');
  });
});

describe('durations in words', () => {
  it.each([
    [0, 'nothing'],
    [45, '45 min'],
    [390, '6 h 30 min'],
    [1440, '1 d'],
    [3000, '2 d 2 h'],
    [2921, '2 d 41 min'],
  ])('%d minutes', (minutes, words) => {
    expect(durationWords(minutes)).toBe(words);
  });
});
