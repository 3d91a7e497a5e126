import { expect, it } from '@jest/globals';
import { sayValue } from './say-value.js';

it.each([
  [undefined, 'nothing'],
  [null, 'nothing'],
  [[1], 'a list'],
  [{ a: 1 }, 'an object'],
  ['walk', '"walk"'],
  [7.5, '7.5'],
  [true, 'true'],
  [Symbol('x'), 'a symbol'],
  [4n, 'a bigint'],
  [() => 1, 'a function'],
])('%p is said as %p', (value, said) => {
  expect(sayValue(value)).toBe(said);
});

it('cuts what is long', () => {
  const said = sayValue('x'.repeat(200));
  expect(said).toHaveLength(38);
  expect(said.endsWith('…')).toBe(true);
});
