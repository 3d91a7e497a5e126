import { expect, it } from '@jest/globals';
import { fanScale } from './fan-scale.js';

it('lays the first moment at 0, the last at 1000, and keeps proportions', () => {
  const scale = fanScale([30, 10, 20]);
  expect([10, 15, 20, 30].map(scale)).toEqual([0, 250, 500, 1000]);
});

it('lays a moment that is alone in the middle', () => {
  expect(fanScale([7, 7])(7)).toBe(500);
});
