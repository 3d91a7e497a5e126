import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { fingerprint } from './fingerprint.js';

describe('the fingerprint of an input', () => {
  it('does not depend on the order of keys or on keys without a value', () => {
    expect(fingerprint({ a: 1, b: { c: [1, 2], d: null }, e: undefined })).toBe(
      fingerprint({ b: { d: null, c: [1, 2] }, a: 1 }),
    );
  });

  it('tells different inputs apart', () => {
    expect(fingerprint({ at: new Date(0) })).not.toBe(fingerprint({ at: new Date(1) }));
    expect(fingerprint({ list: [1, 2] })).not.toBe(fingerprint({ list: [2, 1] }));
  });

  it('is the same for a value and for its JSON', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        expect(fingerprint(JSON.parse(JSON.stringify(value)))).toBe(fingerprint(value));
      }),
    );
  });
});
