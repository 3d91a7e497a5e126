import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { findCircle } from './find-circle.js';

const steps = (...pairs: string[]) => pairs.map((pair) => ({ from: pair[0] ?? '', to: pair[1] ?? '' }));

describe('finding a circle', () => {
  it('finds none in a chain or a diamond', () => {
    expect(findCircle(steps('ab', 'bc', 'ac', 'cd', 'bd'))).toBeUndefined();
    expect(findCircle([])).toBeUndefined();
  });

  it('names a circle in the order of its links', () => {
    expect(findCircle(steps('xa', 'ab', 'bc', 'ca'))).toEqual(['a', 'b', 'c', 'a']);
  });

  it('names what waits for itself', () => {
    expect(findCircle(steps('ab', 'bb'))).toEqual(['b', 'b']);
  });

  it('finds none where all links run upwards, and one when the way back is added', () => {
    const upward = fc
      .array(fc.tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 9 })), { minLength: 1 })
      .map((pairs) => pairs.filter(([a, b]) => a < b))
      .filter((pairs) => pairs.length > 0);
    fc.assert(
      fc.property(upward, (pairs) => {
        const links = pairs.map(([a, b]) => ({ from: String(a), to: String(b) }));
        expect(findCircle(links)).toBeUndefined();
        const [first] = links;
        if (!first) return;
        const circle = findCircle([...links, { from: first.to, to: first.from }]);
        expect(circle?.[0]).toBe(circle?.at(-1));
      }),
    );
  });
});
