import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { COMMON_PRACTICE } from '../source.js';
import type { HoldPointItem } from './item.js';
import { judgeHoldPoint } from './judge-hold-point.js';
import { readMeasured } from './read-measured.js';

const ITEMS: HoldPointItem[] = [
  {
    id: 'depth',
    label: 'Depth',
    unit: 'in',
    many: true,
    limit: { atLeast: 48 },
    required: true,
    source: COMMON_PRACTICE,
  },
  {
    id: 'safe',
    label: 'Safe',
    unit: null,
    limit: { confirmed: true },
    required: true,
    source: COMMON_PRACTICE,
  },
  { id: 'note', label: 'Note', unit: 'in', limit: { atMost: 5 }, required: false, source: COMMON_PRACTICE },
];

describe('a hold point', () => {
  it('may be released when every required item is right', () => {
    const judged = judgeHoldPoint(ITEMS, { depth: [48, 49], safe: true });
    expect(judged.ok).toBe(true);
    expect(judged.findings.map((finding) => finding.rule)).toEqual(['depth', 'safe']);
  });

  it('stays closed while a required item is not measured', () => {
    expect(judgeHoldPoint(ITEMS, { safe: true })).toMatchObject({
      ok: false,
      faults: [{ path: 'depth', message: 'Depth: not measured; measure it' }],
    });
  });

  it('stays closed when an optional item was measured and is wrong', () => {
    expect(judgeHoldPoint(ITEMS, { depth: [48], safe: true, note: 6 }).ok).toBe(false);
  });

  it('does not swallow a value for an item that does not exist', () => {
    expect(judgeHoldPoint(ITEMS, { depth: [48], safe: true, dept: 47 }).faults).toEqual([
      { path: 'dept', message: 'no such item here; remove it' },
    ]);
  });

  it('without items has nothing to measure', () => {
    expect(judgeHoldPoint([], {})).toEqual({ ok: true, findings: [], faults: [] });
  });

  it('is not fooled by names every object has', () => {
    const items = [{ ...ITEMS[1], id: 'constructor' } as HoldPointItem];
    expect(judgeHoldPoint(items, {}).ok).toBe(false);
  });

  it('is released for depths exactly when all of them reach frost', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 40, max: 60 }), { minLength: 1 }), (depth) => {
        expect(judgeHoldPoint(ITEMS, { depth, safe: true }).ok).toBe(depth.every((one) => one >= 48));
      }),
    );
  });
});

describe('reading what was measured', () => {
  it('takes numbers, lists of numbers, yes and no', () => {
    const value = { depth: [48, 49.5], safe: true, note: 4 };
    expect(readMeasured(value)).toEqual({ ok: true, measured: value });
  });

  it('names each value that is none', () => {
    expect(readMeasured({ depth: [48, 'x'], note: 'four', safe: null })).toEqual({
      ok: false,
      faults: [
        { path: 'depth[1]', message: 'must be a number, got "x"' },
        { path: 'note', message: 'must be a number, got "four"' },
        { path: 'safe', message: 'must be a number, got nothing' },
      ],
    });
  });

  it('refuses an empty list', () => {
    expect(readMeasured({ depth: [] }).ok).toBe(false);
  });

  it.each([null, [], 4, 'x'])('%p is nothing measured', (value) => {
    expect(readMeasured(value)).toMatchObject({ ok: false, faults: [{ path: '' }] });
  });

  it('nothing at all can make it throw', () => {
    fc.assert(
      fc.property(fc.anything(), (value) => {
        const read = readMeasured(value);
        expect(typeof read.ok).toBe('boolean');
      }),
    );
  });
});
