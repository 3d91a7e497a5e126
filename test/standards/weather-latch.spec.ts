import { describe, expect, it } from '@jest/globals';
import { freezeThawLatch, LATCH_SOURCE } from '../../shared/weather/freeze-thaw-latch.js';
import { celsius } from '../../shared/units/temperature.js';

const reading = (before: number, now: number, expected: number) => ({
  before: celsius(before),
  now: celsius(now),
  expected: celsius(expected),
});

// Source: NHBC Standards 3.2 (published): stop at 3 °C and falling, resume at 1 °C and rising if 3 °C is expected.
describe('stopping and resuming', () => {
  it('stops at 3 °C and falling', () => {
    expect(freezeThawLatch(true, reading(4, 3, 2))).toBe(false);
  });

  it('resumes at 1 °C and rising towards 4 °C', () => {
    expect(freezeThawLatch(false, reading(0, 1, 4))).toBe(true);
  });

  it('stays stopped at 1 °C and rising towards 2 °C', () => {
    expect(freezeThawLatch(false, reading(0, 1, 2))).toBe(false);
  });

  it('keeps running at 3 °C and rising', () => {
    expect(freezeThawLatch(true, reading(2, 3, 5))).toBe(true);
  });

  it('stays stopped at 2 °C and falling', () => {
    expect(freezeThawLatch(false, reading(3, 2, 4))).toBe(false);
  });

  it('is published', () => {
    expect(LATCH_SOURCE).toMatchObject({ mark: 'P', text: expect.stringContaining('NHBC Standards 3.2') });
  });
});
