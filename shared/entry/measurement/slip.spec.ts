import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { guessSlip } from './slip.js';

describe('guessing what was meant', () => {
  it.each([
    [75, 4, 7.75, 'did you mean 7.5?'],
    [725, 4, 7.75, 'did you mean 7.25?'],
    [4, 6, 144, 'did you mean 48?'],
    [600, 24, 480, 'did you mean 60?'],
    [0.75, 4, 7.75, 'did you mean 7.5?'],
  ])('%p for %p to %p: %p', (value, min, max, guess) => {
    expect(guessSlip(value, min, max)).toBe(guess);
  });

  it('gives nothing where nothing fits', () => {
    expect(guessSlip(9, 4, 7.75)).toBeUndefined();
    expect(guessSlip(-3, 4, 7.75)).toBeUndefined();
    expect(guessSlip(0, 4, 7.75)).toBeUndefined();
  });

  it('never guesses what would be refused again', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1e5, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (value, low, width) => {
          const guess = /did you mean ([\d.e-]+)\?/.exec(guessSlip(value, low, low + width) ?? '')?.[1];
          if (guess === undefined) return;
          expect(Number(guess)).toBeGreaterThanOrEqual(low);
          expect(Number(guess)).toBeLessThanOrEqual(low + width);
        },
      ),
    );
  });
});
