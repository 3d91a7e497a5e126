import { describe, expect, it } from '@jest/globals';
import { floatWords } from './float-words.js';

describe('floats in words', () => {
  it('tell what a slip moves', () => {
    expect(floatWords({ totalFloatMinutes: 600, freeFloatMinutes: 90, critical: false })).toBe(
      '1 h 30 min without moving any other phase; 10 h without moving the end of the job. Counted in its own working time.',
    );
    expect(floatWords({ totalFloatMinutes: 600, freeFloatMinutes: 0, critical: false })).toMatch(
      /^none without moving other phases; 10 h/,
    );
  });

  it('tell that there is none, or less than none', () => {
    expect(floatWords({ totalFloatMinutes: 0, freeFloatMinutes: 0, critical: true })).toMatch(/^None:/);
    expect(floatWords({ totalFloatMinutes: -120, freeFloatMinutes: 0, critical: true })).toMatch(/^2 h late/);
  });
});
