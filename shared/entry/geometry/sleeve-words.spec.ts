import { describe, expect, it } from '@jest/globals';
import { sleeveWords } from './sleeve-words.js';

const at = (x: number, y = 0) => ({ x, y });

describe('where the leads come through', () => {
  it.each([
    [at(0), at(120), at(8), '8 in'],
    [at(0), at(120), at(60), '5 ft'],
    [at(0), at(120), at(62), '5 ft 2 in'],
    [at(120), at(0), at(62), '5 ft 2 in'],
    [at(-24), at(96), at(0), '2 ft'],
    // A wall that runs away from the street: 3, 4, 5.
    [at(0), at(60, 80), at(30, 40), '4 ft 2 in'],
    [at(10), at(120), at(10), '0 in'],
  ])('%#: %j to %j', (from, to, penetration, words) => {
    expect(sleeveWords({ wall: [from, to], penetration } as never)).toContain(`house, ${words} along it`);
  });
});
