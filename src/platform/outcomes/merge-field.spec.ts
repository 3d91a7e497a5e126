import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { mergeField } from './merge-field.js';

const value = fc.constantFrom(null, 'a', 'b', 'c');
const intent = fc.record({
  standing: value,
  seen: value,
  asked: value,
  revision: fc.record({ now: fc.integer({ min: 1, max: 3 }), base: fc.constantFrom(null, 1, 2, 3) }),
});

describe('an intent about one field', () => {
  it('is applied where the field stands as it was read, though the row has changed', () => {
    const revision = { now: 9, base: 1 };
    expect(mergeField({ standing: 'a', seen: 'a', asked: 'b', revision })).toBe('apply');
    expect(mergeField({ standing: null, seen: null, asked: 'b', revision })).toBe('apply');
  });

  it('is applied where the row was not touched, though an earlier intent of the same phone came to nothing', () => {
    expect(mergeField({ standing: null, seen: 'a', asked: 'b', revision: { now: 4, base: 4 } })).toBe(
      'apply',
    );
  });

  it('is a conflict where somebody else set another value', () => {
    expect(mergeField({ standing: 'c', seen: 'a', asked: 'b', revision: { now: 2, base: 1 } })).toBe(
      'conflict',
    );
    expect(mergeField({ standing: 'c', seen: null, asked: 'b', revision: { now: 2, base: null } })).toBe(
      'conflict',
    );
  });

  it('never writes over a value that the caller has not seen, and asks nobody about equal values', () => {
    fc.assert(
      fc.property(intent, (one) => {
        const answer = mergeField(one);
        if (one.standing === one.asked) expect(answer).toBe('same');
        if (answer === 'apply')
          expect(one.standing === one.seen || one.revision.now === one.revision.base).toBe(true);
        if (answer === 'conflict') expect(one.standing).not.toBe(one.seen);
      }),
    );
  });
});
