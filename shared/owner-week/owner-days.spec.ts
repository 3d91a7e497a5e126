import { describe, expect, it } from '@jest/globals';
import type { OwnerPhase, SiteDay } from './owner-facts.js';
import { ownerDays } from './owner-days.js';
import { summaryWords } from './summary-words.js';
import { OPEN_HOLE, workWords } from './work-words.js';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const days: SiteDay[] = Array.from({ length: 7 }, (_, i) => ({
  date: `2031-01-${String(6 + i).padStart(2, '0')}`,
  from: i * DAY,
  until: (i + 1) * DAY,
}));
const phase = (kind: string, from: number, until: number, more: Partial<OwnerPhase> = {}): OwnerPhase => ({
  kind,
  state: 'waiting',
  stretches: [{ from, until }],
  agreed: true,
  ...more,
});

describe('the days of an owner', () => {
  it('say on each day what happens and what to keep clear', () => {
    const pour = phase('footing-pour', 2 * DAY + 8 * HOUR, 2 * DAY + 12 * HOUR);
    const cure = phase('footing-cure', 2 * DAY + 12 * HOUR, 4 * DAY);
    const read = ownerDays(days, [pour, cure], []);
    expect(read.map(({ lines }) => lines.length)).toEqual([0, 0, 2, 1, 0, 0, 0]);
    expect(read[2]).toEqual({
      date: '2031-01-08',
      lines: [workWords('footing-pour').doing, workWords('footing-cure').doing],
      keepClear: [workWords('footing-pour').keepClear, workWords('footing-cure').keepClear],
      weather: [],
    });
  });

  it('do not count a day that work only touches at midnight', () => {
    const read = ownerDays(days, [phase('dig', DAY, 2 * DAY)], []);
    expect(read.map(({ lines }) => lines.length)).toEqual([0, 1, 0, 0, 0, 0, 0]);
  });

  it('warn of the open hole from the digging until masons build in it, on days without work too', () => {
    const read = ownerDays(
      days,
      [phase('dig', DAY + 8 * HOUR, DAY + 16 * HOUR), phase('block', 4 * DAY + 8 * HOUR, 5 * DAY)],
      [],
    );
    expect(read.map(({ keepClear }) => keepClear.includes(OPEN_HOLE))).toEqual([
      false,
      true,
      true,
      true,
      false,
      false,
      false,
    ]);
    expect(read[2]).toMatchObject({ lines: [], keepClear: [OPEN_HOLE] });
    // A plan that does not say when it is built in leaves it open.
    expect(
      ownerDays(days, [phase('dig', 0, HOUR)], []).every(({ keepClear }) => keepClear.length === 1),
    ).toBe(true);
  });

  it('say a thing once, on however many areas it is done', () => {
    const [first] = ownerDays(days, [phase('stone', 0, HOUR), phase('stone', HOUR, 2 * HOUR)], []);
    expect(first?.lines).toEqual([workWords('stone').doing]);
    expect(first?.keepClear).toEqual([workWords('stone').keepClear]);
  });

  it('call what nobody agreed to expected, unless it has begun', () => {
    const [first] = ownerDays(
      days,
      [phase('dig', 0, HOUR, { agreed: false }), phase('demo', 0, HOUR, { agreed: false, state: 'started' })],
      [],
    );
    expect(first?.lines).toEqual([`Expected: ${workWords('dig').doing}`, workWords('demo').doing]);
  });

  it('say why weather keeps people away, on the days it does', () => {
    const read = ownerDays(
      days,
      [],
      [
        { from: DAY + HOUR, until: 2 * DAY + HOUR, why: 'Too cold for mortar: 18 °F is forecast' },
        { from: 2 * DAY, until: Number.POSITIVE_INFINITY, why: null },
      ],
    );
    expect(read.map(({ weather }) => weather.length)).toEqual([0, 1, 2, 1, 1, 1, 1]);
    expect(read[1]?.weather[0]).toContain('Too cold for mortar: 18 °F is forecast.');
    expect(read[3]?.weather[0]).toContain('the crew has stopped it');
  });
});

describe('the week of an owner in a sentence', () => {
  const quiet = ownerDays(days, [], []);
  const busy = ownerDays(days, [phase('dig', 0, HOUR), phase('demo', 3 * DAY, 3 * DAY + HOUR)], []);
  it.each([
    [quiet, 'running', 'Nothing is planned'],
    [busy, 'running', 'on 2 of these seven days.'],
    [ownerDays(days, [phase('dig', 0, HOUR)], []), 'running', 'on one of these seven days.'],
    [
      ownerDays(days, [phase('dig', 0, HOUR)], [{ from: 0, until: 1, why: null }]),
      'running',
      'The weather keeps',
    ],
    [busy, 'done', 'finished'],
    [busy, 'cancelled', 'given up'],
  ] as const)('%#', (read, state, words) => {
    expect(summaryWords(read, state)).toContain(words);
  });
});
