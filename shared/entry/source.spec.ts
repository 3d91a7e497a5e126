import { describe, expect, it } from '@jest/globals';
import { COMMON_PRACTICE, describeSource, fromMemory, MARKS, published, TRADE_RULE } from './source.js';

describe('a source in words', () => {
  it.each([
    [published('IRC R403.3'), 'IRC R403.3 [published]'],
    [COMMON_PRACTICE, 'common practice, no source [common practice]'],
    [fromMemory('ASTM C1780'), 'ASTM C1780 [from memory, verify against the text]'],
    [TRADE_RULE, 'rule of the trade, no source [rule of the trade]'],
  ])('%p reads %p', (source, words) => {
    expect(describeSource(source)).toBe(words);
  });

  it('knows every mark', () => {
    expect(MARKS).toEqual(['P', 'C', 'M', 'T']);
  });
});
