import { describe, expect, it } from '@jest/globals';
import { epochMs, HOUR_MS } from '../units/time.js';
import { earlierHours } from './earlier-hours.js';
import { fairHour, h } from './testing/hour-values.js';

const numbers = (from: number, to: number) => Array.from({ length: to - from }, (_, i) => from + i);
const kept = (known: readonly number[], first: number) =>
  earlierHours(
    known.map((i) => fairHour(i)),
    h(first),
  ).map(({ at }) => (at - h(0)) / HOUR_MS);

describe('hours kept from the forecast before', () => {
  it('are those before the first of the new one', () => {
    expect(kept([0, 1, 2, 3, 4], 3)).toEqual([0, 1, 2]);
    expect(kept([5, 6], 3)).toEqual([]);
  });

  it('reach five days back at most', () => {
    expect(kept(numbers(0, 200), 150)).toEqual(numbers(30, 150));
  });

  it('are none where the new one counts its hours from other minutes', () => {
    const half = epochMs(h(3) + HOUR_MS / 2);
    expect(earlierHours([fairHour(0), fairHour(1)], half)).toEqual([]);
  });
});
