import { expect, test } from '@jest/globals';
import { compareIds, sortedById } from './by-id.js';

test('ids go by code unit, whatever the language of the machine', () => {
  const ids = ['é', 'b', 'a10', 'a2', 'B', 'a'];
  expect([...ids].sort(compareIds)).toEqual(['B', 'a', 'a10', 'a2', 'b', 'é']);
});

test('what has the same id keeps the order in which it came, and the given list stays as it is', () => {
  const list = [
    { id: 'b', n: 1 },
    { id: 'a', n: 2 },
    { id: 'b', n: 3 },
    { id: 'a', n: 4 },
  ];
  expect(sortedById(list).map(({ n }) => n)).toEqual([2, 4, 1, 3]);
  expect(list.map(({ n }) => n)).toEqual([1, 2, 3, 4]);
  expect(compareIds('a', 'a')).toBe(0);
});
