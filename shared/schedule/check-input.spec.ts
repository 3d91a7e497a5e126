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
  ];
  test.each(bad)('%s', (what, part) => {
    expect(() => plan({ ...base, ...part })).toThrow(what);
  });

  test('and one that can be is not', () => {
    expect(plan({ ...base, inspections: [visit] }).conflicts).toEqual([]);
  });
});
