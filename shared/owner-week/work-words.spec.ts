import { describe, expect, it } from '@jest/globals';
import { HEATED_ENTRY } from '../entry/template/default/heated-entry.js';
import { workWords } from './work-words.js';

describe('what an owner is told of the work', () => {
  const other = workWords('a kind that a company made');

  it('has words of its own for every kind of the template', () => {
    const kinds = HEATED_ENTRY.phases.map(({ kind }) => kind);
    expect(kinds.length).toBeGreaterThan(15);
    expect(kinds.filter((kind) => workWords(kind) === other)).toEqual([]);
  });

  it('says no name of a kind that was not meant for owners', () => {
    expect(other.doing).toBe('Other work at the entry.');
  });

  it('is whole sentences without numbers of a job, names or money', () => {
    for (const { kind } of HEATED_ENTRY.phases) {
      const { doing, keepClear } = workWords(kind);
      for (const text of [doing, ...(keepClear ? [keepClear] : [])]) {
        expect(text).toMatch(/^[A-Z].*\.$/);
        expect(text).not.toMatch(/[$€@\d]/);
      }
    }
  });
});
