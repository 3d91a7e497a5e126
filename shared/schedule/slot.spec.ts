import { expect, test } from '@jest/globals';
import { slot } from './slot.js';

test.each([0, -4, 2 ** 30])('%d is a slot', (value) => {
  expect(slot(value)).toBe(value);
});

test.each([0.25, NaN, Infinity, 2 ** 53])('%d is none, and the message says what to do', (value) => {
  expect(() => slot(value)).toThrow(`got ${value}: round at the edge first`);
  expect(() => slot(value)).toThrow(RangeError);
});
