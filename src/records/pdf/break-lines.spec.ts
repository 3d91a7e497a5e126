import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { breakLines } from './break-lines.js';

const letters = (piece: string): number => [...piece].length;

describe('a text in lines', () => {
  it.each([
    ['one two three', 7, ['one two', 'three']],
    ['one', 3, ['one']],
    ['abcdefgh', 3, ['abc', 'def', 'gh']],
    ['a bcdefg h', 4, ['a', 'bcde', 'fg h']],
    ['👍👍👍', 2, ['👍👍', '👍']],
    ['', 5, []],
    ['ab', 0.5, ['a', 'b']],
  ])('%j in %d', (text, width, lines) => {
    expect(breakLines(text, width, letters)).toEqual(lines);
  });

  it('is no wider than it may be, and loses no letter', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), fc.integer({ min: 1, max: 30 }), (text, width) => {
        const lines = breakLines(text, width, letters);
        for (const line of lines) expect(letters(line)).toBeLessThanOrEqual(width);
        expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
      }),
    );
  });
});
