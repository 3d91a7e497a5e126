import { describe, expect, it } from '@jest/globals';
import { bearerToken, hashToken, makeToken } from './logger-token.js';

describe('the token of a logger', () => {
  it('is new each time and fits into a header', () => {
    const tokens = new Set(Array.from({ length: 100 }, makeToken));
    expect(tokens.size).toBe(100);
    for (const token of tokens) expect(bearerToken(`Bearer ${token}`)).toBe(token);
  });

  it('is kept as a SHA-256, which does not show it', () => {
    // FIPS 180-2, appendix B.1: the message "abc".
    expect(hashToken('abc')).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad');
  });

  it.each([
    undefined,
    '',
    'Bearer',
    'Bearer short',
    'bearer abcdefghijklmnopqrstuvwxyz',
    'Basic abcdefghijklmnopqrstuvwxyz',
    'Bearer abcdefghijklmnopqrst uvwxyz',
    `Bearer ${'a'.repeat(201)}`,
  ])('is not read from "%s"', (header) => {
    expect(bearerToken(header)).toBeNull();
  });
});
