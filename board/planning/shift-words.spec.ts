import { expect, it } from '@jest/globals';
import { shiftWords } from './shift-words.js';

it.each([
  [null, 'no end'],
  [0, 'the same'],
  [15, '0.25 h later'],
  [-90, '1.5 h earlier'],
  [1440, '1 d later'],
  [-1440 - 120, '1 d 2 h earlier'],
])('%s minutes are "%s"', (minutes, words) => {
  expect(shiftWords(minutes)).toBe(words);
});
