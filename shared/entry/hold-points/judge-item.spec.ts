import { describe, expect, it } from '@jest/globals';
import { COMMON_PRACTICE } from '../source.js';
import type { HoldPointItem, ItemLimit, MeasuredValue } from './item.js';
import { judgeItem, sayLimit } from './judge-item.js';

const item = (limit: ItemLimit, more: Partial<HoldPointItem> = {}): HoldPointItem => ({
  id: 'thing',
  label: 'Thing',
  unit: 'in',
  limit,
  required: true,
  source: COMMON_PRACTICE,
  ...more,
});

describe('one value', () => {
  it.each([
    [{ atLeast: 48 }, 48, true],
    [{ atLeast: 48 }, 47.9, false],
    [{ atMost: 7.75 }, 7.75, true],
    [{ atMost: 7.75 }, 7.76, false],
    [{ atLeast: 55, atMost: 100 }, 54.9, false],
    [{ atLeast: 55, atMost: 100 }, 100.1, false],
    [{ atLeast: 55, atMost: 100 }, 70, true],
    [{}, -1, true],
  ])('%p with %p: %p', (limit, value, ok) => {
    expect(judgeItem(item(limit), value).ok).toBe(ok);
  });

  it('carries value, limit and source to where it is shown', () => {
    expect(judgeItem(item({ atLeast: 48 }), 47)).toEqual({
      rule: 'thing',
      ok: false,
      measured: '47 in',
      limit: 'at least 48 in',
      source: COMMON_PRACTICE,
      text: 'Thing: 47 in is under 48 in',
    });
  });
});

describe('several values', () => {
  const many = (limit: ItemLimit) => item(limit, { many: true });

  it('each must hold, and the one that does not is named', () => {
    expect(judgeItem(many({ atLeast: 48 }), [49, 47, 50]).text).toBe('Thing: value 2, 47 in is under 48 in');
  });

  it('all that do not hold are named', () => {
    expect(judgeItem(many({ atMost: 12 }), [13, 12, 14]).text).toBe(
      'Thing: value 1, 13 in is over 12 in; value 3, 14 in is over 12 in',
    );
  });

  it('must be equal within what is asked', () => {
    expect(judgeItem(many({ equalWithin: 0.375 }), [7.25, 7.625]).ok).toBe(true);
    expect(judgeItem(many({ equalWithin: 0.375 }), [7.25, 7.63]).text).toBe(
      'Thing: values differ by 0.38 in, more than 0.375 in',
    );
  });

  it('may be one', () => {
    expect(judgeItem(many({ atLeast: 3 }), 3).ok).toBe(true);
  });
});

describe('a value of the wrong kind', () => {
  it.each<[HoldPointItem, MeasuredValue, string]>([
    [item({ atLeast: 3 }), true, 'Thing: enter a number in in'],
    [item({ atLeast: 3 }), [3, 4], 'Thing: enter one value'],
    [item({ atLeast: 3 }, { many: true }), [], 'Thing: enter at least one value'],
    [item({ atLeast: 3 }), NaN, 'Thing: enter finite numbers'],
    [item({ confirmed: true }, { unit: null }), false, 'Thing: not confirmed; put it right, then confirm it'],
    [item({ confirmed: true }, { unit: null }), 1, 'Thing: not confirmed; put it right, then confirm it'],
  ])('%p with %p is refused', (given, value, text) => {
    expect(judgeItem(given, value)).toMatchObject({ ok: false, text });
  });
});

describe('a limit in words', () => {
  it.each<[ItemLimit, string]>([
    [{ confirmed: true }, 'confirmed'],
    [
      { atLeast: 4, atMost: 7.75, equalWithin: 0.375 },
      'at least 4 in, at most 7.75 in, equal within 0.375 in',
    ],
    [{}, 'recorded'],
  ])('%p is %p', (limit, words) => {
    expect(sayLimit(limit, 'in')).toBe(words);
  });
});
