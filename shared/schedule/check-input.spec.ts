import { describe, expect, test } from '@jest/globals';
import type { PlanInput } from './model.js';
import { plan } from './plan.js';
import { slot } from './slot.js';
import { inputWith, link, work } from './spec-input.js';

const base = inputWith({ phases: [work('a', 4), work('b', 4)], links: [link('a', 'b')] });
const visit = {
  id: 'i',
  jobId: 'job',
  after: ['a'],
  notice: 0,
  noticeIn: 'elapsed',
  calendarId: 'workdays',
  visit: 2,
  state: { kind: 'open' },
} as const;

describe('an input that cannot be planned is refused with every fault', () => {
  const bad: [string, Partial<PlanInput>][] = [
    ['a greatest lag that is not whole slots', { links: [{ ...link('a', 'b'), mostLag: 0.5 }] }],
    ['a time of validity that is not a whole number', { inspections: [{ ...visit, validFor: -1 }] }],
    ['a lag that is not whole slots', { links: [link('a', 'b', 'FS', 0.5)] }],
    ['is given twice', { phases: [work('a', 4), work('a', 4), work('b', 4)] }],
    ['names job "nobody"', { phases: [work('a', 4, { jobId: 'nobody' }), work('b', 4)] }],
    ['horizon is not a positive number', { horizon: 0 }],
    [
      'finished without having started',
      { phases: [work('a', 4, { facts: { actualFinish: slot(3) } }), work('b', 4)] },
    ],
    [
      'finished without having started before',
      { phases: [work('a', 4, { facts: { actualStart: slot(9), actualFinish: slot(3) } }), work('b', 4)] },
    ],
    ['phase "a" has a duration that is not a whole number', { phases: [work('a', 2.5), work('b', 4)] }],
    ['phase "a" has a duration that is not a whole number', { phases: [work('a', -1), work('b', 4)] }],
    [
      'phase "b" has remaining work that is not a whole number',
      { phases: [work('a', 4), work('b', 4, { facts: { actualStart: slot(0), remaining: -1 } })] },
    ],
    [
      'phase "b" has remaining work that is not a whole number',
      { phases: [work('a', 4), work('b', 4, { facts: { actualStart: slot(0), remaining: 0.5 } })] },
    ],
    [
      'phase "a" holds a quantity that is not above zero',
      {
        pools: [{ id: 'blankets', quantity: 1 }],
        phases: [work('a', 4, { holds: [{ poolId: 'blankets', quantity: 0 }] }), work('b', 4)],
      },
    ],
    ['inspection "i" has a notice that is not a whole number', { inspections: [{ ...visit, notice: -4 }] }],
    ['inspection "i" has a length that is not a whole number', { inspections: [{ ...visit, visit: 0.5 }] }],
  ];
  test.each(bad)('%s', (what, part) => {
    expect(() => plan({ ...base, ...part })).toThrow(what);
  });

  test('and one that can be is not', () => {
    expect(plan({ ...base, inspections: [visit] }).conflicts).toEqual([]);
  });
});
