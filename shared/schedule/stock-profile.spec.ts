import { expect, test } from '@jest/globals';
import fc from 'fast-check';
import { slot } from './slot.js';
import { StockProfile } from './stock-profile.js';

const loan = fc.record({
  from: fc.integer({ min: 0, max: 40 }),
  length: fc.oneof(fc.integer({ min: 0, max: 15 }), fc.constant(Infinity)),
  quantity: fc.integer({ min: 1, max: 3 }),
});

test('the first shortage is the one that counting slot by slot finds', () => {
  fc.assert(
    fc.property(
      fc.array(loan, { maxLength: 6 }),
      fc.integer({ min: -3, max: 50 }),
      fc.integer({ min: 0, max: 20 }),
      fc.integer({ min: 0, max: 5 }),
      (loans, from, length, quantity) => {
        const profile = new StockProfile(5);
        for (const one of loans) profile.add(one.from, one.from + one.length, one.quantity);
        const short = (t: number): boolean =>
          loans.reduce((sum, l) => sum + (l.from <= t && t < l.from + l.length ? l.quantity : 0), quantity) >
          5;
        let first = from;
        while (first < from + length && !short(first)) first++;
        let end = first;
        while (end < 120 && short(end)) end++;
        const expected =
          first >= from + length ? undefined : { from: first, to: end === 120 ? Infinity : end };
        expect(profile.firstShort(slot(from), from + length, quantity)).toEqual(expected);
      },
    ),
  );
});

test('what is given back leaves no trace', () => {
  const profile = new StockProfile(2);
  profile.add(3, Infinity, 2);
  profile.add(3, Infinity, -2);
  expect(profile.firstShort(slot(0), Infinity, 2)).toBeUndefined();
});
