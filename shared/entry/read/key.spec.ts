import { describe, expect, it } from '@jest/globals';
import { describeFaults } from './fault.js';
import { KEY, repeated } from './key.js';

describe('keys', () => {
  it.each(['landing', 'walk-1', 'a'])('%p is one', (key) => {
    expect(KEY.like.test(key)).toBe(true);
  });

  it.each(['', 'Walk', '1walk', 'walk.1', 'walk 1', 'x'.repeat(41)])('%p is none', (key) => {
    expect(KEY.like.test(key)).toBe(false);
  });

  it('that stand more than once are named once', () => {
    expect(repeated(['a', 'b', 'a', 'a', 'c', 'b'])).toEqual(['a', 'b']);
    expect(repeated(['a', 'b'])).toEqual([]);
  });
});

describe('faults as a text', () => {
  it('have a line each, with the place where there is one', () => {
    const faults = [
      { path: '', message: 'must be an object' },
      { path: 'areas[0].key', message: 'must be a text' },
    ];
    expect(describeFaults(faults)).toBe('must be an object\nareas[0].key: must be a text');
  });
});
