import { describe, expect, it } from '@jest/globals';
import { typedNumber } from './typed-number.js';

/* Fractions of an inch in halves, quarters and eighths, as a tape measure is marked: common practice, no source. */

describe('a number as a person types it', () => {
  it.each([
    ['7', 7],
    [' 7.5 ', 7.5],
    ['7,5', 7.5],
    ['.5', 0.5],
    ['-3', -3],
    ['7 1/2', 7.5],
    ['7½', 7.5],
    ['7 ¾', 7.75],
    ['5/8', 0.625],
    ['⅛', 0.125],
    ['0', 0],
    ['12', 12],
    ['120 3/4', 120.75],
  ])('"%s" is %p', (text, value) => expect(typedNumber(text)).toBe(value));

  it.each(['', '  ', 'seven', '7 in', '1e3', '7 1/0', '-', '7.', '7 1/', '1/2/3', '7..5', '71/2'])(
    '"%s" is none',
    (text) => expect(typedNumber(text)).toBeNull(),
  );
});
