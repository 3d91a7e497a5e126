import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { printable } from './printable.js';

const latin = (code: number): boolean => code >= 0x20 && code < 0x250;

describe('a text for paper', () => {
  it.each([
    ['Larch Street 4', 'Larch Street 4'],
    ['two\nlines\tand  more', 'two lines and more'],
    ['cafe\u0301', 'café'],
    ['木 House', '[U+6728] House'],
    ['well done 👍🏽', 'well done [U+1F44D][U+1F3FD]'],
    ['txt.\u202egpj', 'txt.gpj'],
    ['zero\u200bwidth\ufeff\u0000', 'zerowidth'],
    ['half \ud83d', 'half [U+FFFD]'],
    ['', ''],
  ])('%j becomes %j', (text, shown) => {
    expect(printable(text, latin)).toBe(shown);
  });

  it('has nothing that the font lacks, whatever it was', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        for (const letter of printable(text, latin)) expect(latin(letter.codePointAt(0) ?? 0)).toBe(true);
      }),
    );
  });
});
