import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { findingWords, sentence } from './finding-words.js';

const FINDING = {
  text: 'Footing is 1 in short of frost: dig deeper',
  measured: '41 in',
  limit: 'at least 42 in',
  mark: 'P',
  source: 'IRC 2018 R403.1.4',
  caution: 'Protect the excavation from 5 ft.',
};

describe('a finding in words', () => {
  it('has its value, its limit, where that comes from, and its caution', () => {
    expect(findingWords(FINDING)).toBe(
      'Footing is 1 in short of frost: dig deeper. Found 41 in; limit: at least 42 in (IRC 2018 R403.1.4; published). Caution: Protect the excavation from 5 ft.',
    );
  });

  it('has no empty caution', () => {
    expect(findingWords({ ...FINDING, caution: null })).not.toContain('Caution');
  });

  it('says of a limit from memory that it is', () => {
    expect(findingWords({ ...FINDING, mark: 'M' })).toContain('(IRC 2018 R403.1.4; from memory)');
  });

  it('loses nothing that it was given, whatever that is', () => {
    const words = fc.string({ minLength: 1 }).filter((text) => text.trim() === text);
    fc.assert(
      fc.property(words, words, words, (measured, limit, source) => {
        const said = findingWords({ ...FINDING, measured, limit, source });
        for (const part of [measured, limit, source]) expect(said).toContain(part);
      }),
    );
  });
});

describe('a sentence', () => {
  it.each([
    ['Keep it warm', 'Keep it warm.'],
    ['Keep it warm.', 'Keep it warm.'],
    [' Is it warm? ', 'Is it warm?'],
  ])('of %j is %j', (text, said) => {
    expect(sentence(text)).toBe(said);
  });
});
