import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { readFrom } from './reader.js';

const faultsOf = (value: unknown, read: (root: ReturnType<typeof readFrom>) => void) => {
  const root = readFrom(value);
  read(root);
  return root.faults;
};

describe('reading an object', () => {
  it('names unknown names and what is known', () => {
    expect(faultsOf({ depth: 1, dept: 2 }, (root) => root.object(['depth']))).toEqual([
      { path: 'dept', message: 'unknown name; remove it or use one of: depth' },
    ]);
  });

  it.each([
    [null, 'nothing'],
    [[], 'a list'],
    ['text', '"text"'],
    [4, '4'],
  ])('refuses %p', (value, said) => {
    expect(faultsOf(value, (root) => root.object([]))).toEqual([
      { path: '', message: `must be an object, got ${said}` },
    ]);
  });

  it('does not take what an object inherits for a member', () => {
    expect(readFrom({}).at('toString').missing).toBe(true);
    expect(readFrom({}).at('constructor').missing).toBe(true);
  });

  it('gives the path of what is deep inside', () => {
    const faults = faultsOf({ areas: [{ length: 'x' }] }, (root) =>
      root
        .at('areas')
        .list()
        .forEach((area) => area.at('length').number()),
    );
    expect(faults[0]?.path).toBe('areas[0].length');
  });
});

describe('reading a list', () => {
  it('refuses what is no list', () => {
    expect(faultsOf({ a: 1 }, (root) => root.list())[0]?.message).toBe('must be a list, got an object');
  });

  it('refuses too few', () => {
    expect(faultsOf([], (root) => root.list(1))[0]?.message).toBe('needs at least 1, got 0');
  });
});

describe('reading a number', () => {
  it.each(['4', NaN, Infinity, null, undefined, true, {}])('refuses %p: nothing is guessed', (value) => {
    expect(faultsOf(value, (root) => root.number({ unit: 'in' }))).toHaveLength(1);
  });

  it('says the unit it wants', () => {
    expect(faultsOf('4', (root) => root.number({ unit: 'in' }))[0]?.message).toBe(
      'must be a number in in, got "4"',
    );
  });

  it.each([
    [{ min: 4, max: 8, unit: 'in' }, 9, 'must be 4 to 8 in, got 9'],
    [{ min: 4 }, 3, 'must be at least 4, got 3'],
    [{ max: 4 }, 5, 'must be at most 4, got 5'],
    [{ min: 4, max: 7.75, unit: 'in', range: '4 to 7¾' }, 8, 'must be 4 to 7¾ in, got 8'],
    [{ whole: true }, 1.5, 'must be a whole number, got 1.5'],
  ])('with limits %p says of %p: %p', (limits, value, message) => {
    expect(faultsOf(value, (root) => root.number(limits))).toEqual([{ path: '', message }]);
  });

  it('adds a hint where one is known', () => {
    const limits = { max: 10, hint: () => 'did you mean 7.5?' };
    expect(faultsOf(75, (root) => root.number(limits))[0]?.message).toBe(
      'must be at most 10, got 75; did you mean 7.5?',
    );
  });

  it('takes both ends of its limits', () => {
    expect(faultsOf(4, (root) => root.number({ min: 4, max: 8 }))).toEqual([]);
    expect(faultsOf(8, (root) => root.number({ min: 4, max: 8 }))).toEqual([]);
  });

  it('takes every finite number when there are no limits', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        expect(faultsOf(value, (root) => expect(root.number()).toBe(value))).toEqual([]);
      }),
    );
  });

  it('uses the stand-in only when nothing was given', () => {
    expect(readFrom({}).at('x').numberOr(28)).toBe(28);
    expect(readFrom({ x: 7 }).at('x').numberOr(28)).toBe(7);
    expect(faultsOf({ x: 'seven' }, (root) => root.at('x').numberOr(28))).toHaveLength(1);
  });
});

describe('reading texts, flags and words', () => {
  it.each(['', '   ', 4, null])('refuses %p as a text', (value) => {
    expect(faultsOf(value, (root) => root.text())).toHaveLength(1);
  });

  it('refuses a text that is not spelled as asked', () => {
    const key = { like: /^[a-z]+$/, say: 'must be small letters' };
    expect(faultsOf('A1', (root) => root.text(key))[0]?.message).toBe('must be small letters, got "A1"');
  });

  it.each([1, 'true', null])('refuses %p as yes or no', (value) => {
    expect(faultsOf(value, (root) => root.flag())).toHaveLength(1);
  });

  it('lists the words it knows', () => {
    expect(faultsOf('path', (root) => root.oneOf(['landing', 'walk'] as const))[0]?.message).toBe(
      'must be one of landing, walk, got "path"',
    );
  });
});
