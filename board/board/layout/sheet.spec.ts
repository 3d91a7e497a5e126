import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { addDays, daysBetween } from '../../time/zone-days.js';
import { type Sheet, sheetFor } from './sheet.js';
import { SPANS, spanOf, usualSpan, zoomed } from './spans.js';

describe('the days drawn around those in view', () => {
  it('have the view in their middle at first', () => {
    expect(sheetFor('2031-01-13', 14, null)).toEqual({ from: '2030-12-23', days: 56 });
  });

  it('stay while there is something on either side, and are others near an edge', () => {
    const first = sheetFor('2031-01-13', 14, null);
    expect(sheetFor('2031-01-20', 14, first)).toBe(first);
    const late = sheetFor('2031-02-03', 14, first);
    expect(late).not.toBe(first);
    expect(daysBetween(late.from, '2031-02-03')).toBe(21);
  });

  it('always hold the view, and never more days than are answered at once', () => {
    const span = fc.constantFrom(...SPANS.map(({ days }) => days));
    fc.assert(
      fc.property(span, fc.array(fc.integer({ min: -400, max: 400 }), { maxLength: 8 }), (days, steps) => {
        let from = '2031-01-13';
        let sheet: Sheet | null = null;
        for (const step of [0, ...steps]) {
          from = addDays(from, step);
          sheet = sheetFor(from, days, sheet);
          expect(daysBetween(sheet.from, from)).toBeGreaterThanOrEqual(0);
          expect(daysBetween(from, addDays(sheet.from, sheet.days))).toBeGreaterThanOrEqual(days);
          expect(sheet.days).toBeLessThanOrEqual(400);
        }
      }),
    );
  });
});

describe('the spans', () => {
  it('go closer and wider one by one, from a day to a year', () => {
    expect([zoomed(14, 1), zoomed(14, -1), zoomed(1, 1), zoomed(364, -1)]).toEqual([7, 28, 1, 364]);
  });

  it('are read from the address, which may say anything', () => {
    expect([spanOf('91'), spanOf('5'), spanOf(null)]).toEqual([91, null, null]);
    expect([usualSpan(false), usualSpan(true)]).toEqual([14, 7]);
  });
});
