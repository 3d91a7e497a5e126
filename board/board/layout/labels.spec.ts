import { describe, expect, it } from '@jest/globals';
import { labelWidth, placeLabel } from './labels.js';

describe('the name of a bar', () => {
  const name = 'Footing pour';
  const needed = labelWidth(name);

  it('is written inside where it fits', () => {
    expect(placeLabel(name, { left: 0, right: needed }, needed)).toBe('inside');
  });

  it('is written after the bar where the lane is free', () => {
    expect(placeLabel(name, { left: 0, right: 10 }, 10 + needed)).toBe('after');
  });

  it('is left to the focus where it would run into the next bar', () => {
    expect(placeLabel(name, { left: 0, right: 10 }, 9 + needed)).toBe('none');
  });
});
