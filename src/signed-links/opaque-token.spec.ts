import { describe, expect, it } from '@jest/globals';
import { hashToken, isToken, makeToken } from './opaque-token.js';

describe('the token of a signed link', () => {
  it('is new each time, 256 bits long, and fits into an address as it is', () => {
    const tokens = new Set(Array.from({ length: 200 }, makeToken));
    expect(tokens.size).toBe(200);
    for (const token of tokens) {
      expect(Buffer.from(token, 'base64url')).toHaveLength(32);
      expect(encodeURIComponent(token)).toBe(token);
      expect(isToken(token)).toBe(true);
    }
  });

  it('is kept as a SHA-256, which does not show it', () => {
    // FIPS 180-2, appendix B.1: the message "abc".
    expect(hashToken('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });

  it.each(['', 'short', 'a'.repeat(42), 'a'.repeat(44), `${'a'.repeat(42)}/`, `${'a'.repeat(42)}\n`])(
    'is not %j',
    (text) => {
      expect(isToken(text)).toBe(false);
    },
  );
});
