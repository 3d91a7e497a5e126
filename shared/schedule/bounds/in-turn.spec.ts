import { expect, test } from '@jest/globals';
import { slot } from '../slot.js';
import { greatest, inTurn } from './in-turn.js';

test('the first to finish needs the least, and each next one all needs so far', () => {
  expect(inTurn([7, 2, 4], (total) => slot(10 * total))).toEqual([20, 60, 130]);
  expect(inTurn([], () => slot(1))).toEqual([]);
});

test('of several bounds the greatest holds at every place', () => {
  const slots = (...list: number[]) => list.map(slot);
  expect(greatest(slots(1, 9, 3), slots(4, 5, 6), slots(0, 0, 8))).toEqual([4, 9, 8]);
  expect(greatest(slots(1, 2))).toEqual([1, 2]);
  expect(greatest()).toEqual([]);
});
