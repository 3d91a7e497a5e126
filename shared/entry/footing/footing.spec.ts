import { describe, expect, it } from '@jest/globals';
import { exposedConcrete } from './exposed-concrete.js';
import { FOOTING_CHECKLIST } from './footing-checklist.js';
import { leastCover, leastLap } from './rebar.js';

describe('bars of a footing', () => {
  it('have no less cover when they are thicker', () => {
    for (let bar = 3; bar < 11; bar++)
      expect(leastCover(bar + 1, 'weather')).toBeGreaterThanOrEqual(leastCover(bar, 'weather'));
  });

  it('lap longer when they are thicker or stronger', () => {
    for (const bar of [4, 5, 6]) expect(leastLap(bar, 60)).toBeGreaterThan(leastLap(bar, 40));
    expect(leastLap(5, 60)).toBeGreaterThan(leastLap(4, 60));
  });

  it.each([2, 12, 4.5])('#%p is no bar', (bar) => {
    expect(() => leastCover(bar, 'weather')).toThrow(`got ${bar}`);
  });
});

describe('concrete in the weather', () => {
  it('is stronger where the weather is harder', () => {
    const asked = (['negligible', 'moderate', 'severe'] as const).map((one) => exposedConcrete(one).strength);
    expect([...asked].sort((a, b) => a - b)).toEqual(asked);
  });
});

describe('what is looked at before the pour', () => {
  it('has cover, laps and dowels, ends with the inspection, and names every source', () => {
    const keys = FOOTING_CHECKLIST.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    expect(keys).toEqual(expect.arrayContaining(['cover', 'laps', 'dowel-holes', 'dowels']));
    expect(keys.at(-1)).toBe('inspection');
    for (const item of FOOTING_CHECKLIST) expect(item.source.text).not.toBe('');
  });
});
